<?php

// Every vector of tests/vectors: calls on plain numbers, and requests as text and as PHP's own values: the answers are the
// same, to the bit. Where POURWRIGHT_ANSWERS names a folder, the answers are written there: tests/doors.

declare(strict_types=1);

use Pourwright\PourwrightException;

require __DIR__ . '/check.php';

function write_answers(string $name, array $answers): void
{
    $folder = getenv('POURWRIGHT_ANSWERS');
    if ($folder !== false && $folder !== '') {
        file_put_contents("$folder/php.$name.jsonl", implode("\n", $answers) . "\n");
    }
}

const NOT_FINITE = ['NaN' => NAN, 'Infinity' => INF, '-Infinity' => -INF];

/** A value of a call as PHP has it: what is no number in JSON is written as a text. */
function plain(string $kind, mixed $value): mixed
{
    return match (true) {
        is_array($value) => array_map(fn ($item) => plain($kind, $item), $value),
        is_string($value) && !in_array($kind, ['text', 'word'], true) => NOT_FINITE[$value],
        default => $value,
    };
}

/** What the library answers to a call, as the vectors have it. */
function answer_to(array $calculation, array $call): array
{
    $kinds = array_column($calculation['parameters'], 'kind', 'field');
    $given = [];
    foreach ($call['given'] as $field => $value) {
        $given[$field] = plain($kinds[$field], $value);
    }
    try {
        $found = "Pourwright\\{$call['call']}"(...$given);
    } catch (PourwrightException $error) {
        return ['faults' => array_map(fn ($fault) => ['code' => $fault->code, 'path' => $fault->path], $error->faults)];
    }
    return ['results' => is_array($found) ? $found : [$calculation['results'][0]['field'] => $found]];
}

$lines = fn (string $name) => explode("\n", rtrim(Check::textOf("tests/vectors/$name.jsonl"), "\n"));
[$requests, $answers] = [$lines('requests'), $lines('answers')];
Check::that(count($requests) === count($answers) && count($requests) > 400);

$calculations = json_decode(Check::textOf('core/schema/calculations.json'), true, 512, JSON_THROW_ON_ERROR)['calculations'];
$calculations = array_column($calculations, null, 'name');
$calls = $lines('calls');
Check::that(count($calls) > 600);
$found = [];
foreach ($calls as $index => $line) {
    $call = json_decode($line, true, 512, JSON_THROW_ON_ERROR);
    $answer = answer_to($calculations[$call['call']], $call);
    $found[] = json_encode($answer, JSON_PRESERVE_ZERO_FRACTION | JSON_THROW_ON_ERROR);
    $same = Check::same($answer, array_intersect_key($call, ['results' => 0, 'faults' => 0]));
    Check::that($same, 'calls.jsonl:' . $index + 1 . ": {$call['call']}, {$call['case']} gives {$found[$index]}");
}
write_answers('calls', $found);


/** What stands for a JSON text: one that is JSON, without names twice and numbers that PHP does not hold. */
function held(string $text, string $answer): ?object
{
    if (str_contains($answer, '"code":"duplicate-') || preg_match('/\d{16}|\de\d{3}/', $text)) {
        return null;
    }
    $value = json_decode($text);
    return is_object($value) ? $value : null;
}

$as_values = 0;
$texts = [];
foreach ($requests as $index => $request) {
    $texts[] = $found = Pourwright\answer_text($request);
    Check::that($found === $answers[$index], 'line ' . $index + 1 . "\n  $found\n  not\n  $answers[$index]");

    $value = held($request, $answers[$index]);
    if ($value !== null) {
        $as_values++;
        try {
            $answer = ['result' => Pourwright\calculate($value)];
        } catch (PourwrightException $error) {
            $answer = ['faults' => array_map(fn ($fault) => (array) $fault, $error->faults)];
        }
        $wanted = json_decode($answers[$index], true, 512, JSON_THROW_ON_ERROR);
        Check::that(Check::same($answer, $wanted), 'line ' . $index + 1 . ' as values: ' . json_encode($answer));
    }
}
Check::that($as_values > 0.85 * count($requests), "$as_values of " . count($requests));

write_answers('requests', $texts);

Check::finish('vectors');
