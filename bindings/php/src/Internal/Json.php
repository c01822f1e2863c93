<?php

declare(strict_types=1);

namespace Pourwright\Internal;

use Pourwright\Fault;

/** Documents: JSON text, or arrays and objects that stand for it. */
final class Json
{
    /** More than any document has, and fewer than PHP can nest. */
    private const DEEPEST = 512;

    /** The JSON text of a document. Numbers keep their bits, whatever `serialize_precision` is. */
    public static function text(string|array|object $document): string
    {
        if (is_string($document)) {
            return $document;
        }
        $before = ini_set('serialize_precision', '-1');
        try {
            $flags = JSON_THROW_ON_ERROR | JSON_PRESERVE_ZERO_FRACTION | JSON_UNESCAPED_SLASHES | JSON_UNESCAPED_UNICODE;
            return json_encode($document, $flags, self::DEEPEST);
        } catch (\JsonException $error) {
            $code = match ($error->getCode()) {
                JSON_ERROR_INF_OR_NAN => 'not-finite',
                JSON_ERROR_UTF8 => 'not-utf8',
                default => 'wrong-type',
            };
            $message = "The document cannot be written as JSON: {$error->getMessage()}.";
            $help = 'Use texts in UTF-8, finite numbers, booleans, null, arrays and plain objects.';
            throw Library::refused(new Fault($code, '', $message, $help));
        } finally {
            if ($before !== false) {
                ini_set('serialize_precision', $before);
            }
        }
    }

    /** The array that stands for a JSON text of the library. */
    public static function read(string $text): array
    {
        return json_decode($text, true, self::DEEPEST, JSON_THROW_ON_ERROR);
    }

    /** The result of a request. `$open` is the book or plan that is asked. */
    public static function answered(string $symbol, string|array|object $request, mixed ...$open): array
    {
        $text = self::text($request);
        return self::read(Library::text($symbol, ...[...$open, $text, strlen($text)]))['result'];
    }
}
