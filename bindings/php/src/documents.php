<?php

declare(strict_types=1);

namespace Pourwright;

use FFI;
use Pourwright\Internal\Json;
use Pourwright\Internal\Library;

/** The version of the C library, such as "0.1.0". */
function version(): string
{
    return Library::get()->pour_version();
}

/**
 * Does one calculation: `calculate(['calculate' => 'convert', 'amount' => '1 1/4 cup', 'to' => 'mL'])['value']`.
 *
 * @param string|array|object $request Its fields are in core/schema/request.json, those of the result in
 *     core/schema/answer.json. Write an empty object as `(object) []`.
 * @throws PourwrightException All faults of the request.
 */
function calculate(string|array|object $request): array
{
    return Json::answered('pour_request', $request);
}

/**
 * Answers a request given as JSON text with JSON text: `{"result":...}` or `{"faults":...}`. The text is the same at every
 * door. A faulty request does not throw.
 */
function answer_text(string $request): string
{
    $library = Library::get();
    $out = $library->new('char *');
    $length = $library->new('size_t');
    $failed = $library->new('pour_error *');
    $status = $library->pour_request($request, strlen($request), FFI::addr($out), FFI::addr($length), FFI::addr($failed));
    if ($status !== $library->POUR_OK) {
        $faults = $library->pour_error_json($failed);
        $library->pour_error_free($failed);
        return $faults;
    }
    $answer = FFI::string($out, $length->cdata);
    $library->pour_string_free($out);
    return $answer;
}

/**
 * A JSON Schema: "request", "answer", "book", "orders", "actuals", "plan".
 *
 * @throws PourwrightException With the names, for another one.
 */
function schema(string $name): array
{
    if (str_contains($name, "\0")) {
        throw Library::refused(new Fault('wrong-type', '/name', 'The name has a NUL character.', 'Remove it.'));
    }
    return Json::read(Library::text('pour_schema', $name));
}
