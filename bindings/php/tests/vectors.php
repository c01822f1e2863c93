<?php

// Every request of tests/vectors, as text and as PHP's own values: the answers are the same, to the bit.

declare(strict_types=1);

use Pourwright\PourwrightException;

require __DIR__ . '/check.php';

$lines = fn (string $name) => explode("\n", rtrim(Check::textOf("tests/vectors/$name.jsonl"), "\n"));
[$requests, $answers] = [$lines('requests'), $lines('answers')];
Check::that(count($requests) === count($answers) && count($requests) > 200);

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
foreach ($requests as $index => $request) {
    $found = Pourwright\answer_text($request);
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
Check::that($as_values > 0.9 * count($requests), "$as_values of " . count($requests));

Check::finish('vectors');
