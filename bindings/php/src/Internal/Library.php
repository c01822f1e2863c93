<?php

declare(strict_types=1);

namespace Pourwright\Internal;

use FFI;
use FFI\CData;
use Pourwright\Fault;
use Pourwright\PourwrightException;

/** The C library. POURWRIGHT_LIBRARY names its file; without it the system's loader finds it. */
final class Library
{
    private static ?FFI $library = null;

    public static function get(): FFI
    {
        return self::$library ??= self::load();
    }

    private static function load(): FFI
    {
        $plain = PHP_OS_FAMILY === 'Darwin' ? 'libpourwright.dylib' : 'libpourwright.so';
        $path = getenv('POURWRIGHT_LIBRARY') ?: $plain;
        $library = FFI::cdef((string) file_get_contents(__DIR__ . '/../pourwright.cdef.h'), $path);
        if ($library->pour_abi_version() !== $library->POUR_ABI_VERSION) {
            throw new \RuntimeException('The pourwright library is of another version than this package.');
        }
        return $library;
    }

    /** Does a call whose last parameter is the error, and throws that. */
    public static function checked(string $symbol, mixed ...$arguments): void
    {
        $library = self::get();
        $failed = $library->new('pour_error *');
        $status = $library->$symbol(...[...$arguments, FFI::addr($failed)]);
        if ($status !== $library->POUR_OK) {
            throw self::failed($status, $failed);
        }
    }

    /** The text that a call writes through the pointers after its arguments. */
    public static function text(string $symbol, mixed ...$arguments): string
    {
        $library = self::get();
        $out = $library->new('char *');
        $length = $library->new('size_t');
        self::checked($symbol, ...[...$arguments, FFI::addr($out), FFI::addr($length)]);
        $text = FFI::string($out, $length->cdata);
        $library->pour_string_free($out);
        return $text;
    }

    /** The handle that a call writes through the pointer after its arguments. */
    public static function handle(string $type, string $symbol, mixed ...$arguments): CData
    {
        $out = self::get()->new("$type *");
        self::checked($symbol, ...[...$arguments, FFI::addr($out)]);
        return $out;
    }

    /** A refusal with these faults. */
    public static function refused(Fault ...$faults): PourwrightException
    {
        return new PourwrightException(array_values($faults), self::get()->POUR_REFUSED);
    }

    private static function failed(int $status, CData $failed): PourwrightException
    {
        $library = self::get();
        $faults = [];
        for ($index = 0, $count = $library->pour_error_count($failed); $index < $count; $index++) {
            $faults[] = new Fault(
                self::string($library->pour_error_code($failed, $index)),
                self::string($library->pour_error_path($failed, $index)),
                self::string($library->pour_error_message($failed, $index)),
                self::string($library->pour_error_help($failed, $index)),
            );
        }
        $library->pour_error_free($failed);
        return new PourwrightException($faults, $status);
    }

    /** A `const char *`, which PHP has as text already. */
    private static function string(string|CData $text): string
    {
        return is_string($text) ? $text : FFI::string($text);
    }
}
