<?php

// Every calculation of the table: its example to the bit, and each way in which an argument can be wrong.

declare(strict_types=1);

require __DIR__ . '/check.php';

$table = json_decode(Check::textOf('core/schema/calculations.json'), true, 512, JSON_THROW_ON_ERROR)['calculations'];
$functions = get_defined_functions()['user'];
$own = array_filter($functions, fn ($name) => str_starts_with($name, 'pourwright\\'));
// With those for documents: answer_text, calculate, schema, version.
Check::that(count($own) === count($table) + 4, implode(', ', $own));

/** A value of the table as PHP has it: numbers are floats, unless they are counts. */
function of_table(string $kind, mixed $value): mixed
{
    return match (true) {
        is_array($value) => array_map(fn ($one) => of_table($kind, $one), $value),
        is_int($value) && !in_array($kind, ['count', 'list of counts'], true) => (float) $value,
        default => $value,
    };
}

foreach ($table as $calculation) {
    $call = "Pourwright\\{$calculation['name']}";
    $given = [];
    foreach ($calculation['parameters'] as $index => $parameter) {
        $argument = $calculation['example']['arguments'][$index];
        if ($argument !== null) {
            $argument = of_table($parameter['kind'], $argument);
            $rows = $parameter['kind'] === 'rows';
            $given[$parameter['field']] = $rows ? array_chunk($argument, count($parameter['columns'])) : $argument;
        }
    }
    $wanted = [];
    foreach ($calculation['results'] as $index => $result) {
        $kind = $result['kind'] === 'list' ? 'list of counts' : $result['kind'];
        $wanted[$result['field']] = of_table($kind, $calculation['example']['results'][$index]);
    }
    $found = $call(...$given);
    if (!is_array($found)) {
        [$found, $wanted] = [[$found], array_values($wanted)];
    }
    Check::that(Check::same($found, $wanted), "{$calculation['name']} gives " . json_encode($found) . ', not ' . json_encode($wanted));

    Check::throws(Error::class, fn () => $call(...[...$given, 'no_such' => 1]));
    foreach ($calculation['parameters'] as $parameter) {
        ['field' => $field, 'kind' => $kind] = $parameter;
        $path = "/$field";
        $with = fn (mixed $value) => fn () => $call(...[...$given, $field => $value]);
        if (!$parameter['optional']) {
            Check::throws(ArgumentCountError::class, fn () => $call(...array_diff_key($given, [$field => 0])));
        }
        Check::throws(TypeError::class, $with(new stdClass()));
        if ($kind === 'number') {
            foreach ([NAN, INF, -INF] as $number) {
                Check::refused('not-finite', $path, $with($number));
            }
            Check::throws(TypeError::class, $with('1/4 tsp'));
            Check::refused('out-of-range', $path, $with(-PHP_FLOAT_MAX));
        } elseif ($kind === 'count') {
            Check::throws(TypeError::class, $with(1.5));
            Check::refused('out-of-range', $path, $with(-1));
            Check::refused('out-of-range', $path, $with(2 ** 32 - 1));
        } elseif ($kind === 'word') {
            Check::refused('unknown-word', $path, $with('no such word'));
        } elseif ($kind === 'text') {
            Check::refused('wrong-type', $path, $with("1 cup\0"));
            Check::refused('not-utf8', $path, $with("\xff"));
            Check::refused('too-large', $path, $with(str_repeat('x', 5000)));
        } elseif ($kind === 'list') {
            Check::refused('wrong-type', "$path/1", $with([1, '2']));
            Check::refused('not-finite', "$path/0", $with([NAN, 1, 1]));
        } else {
            $row = array_fill(0, count($parameter['columns']), NAN);
            Check::refused('wrong-type', "$path/0", $with([[1], [1]]));
            Check::refused('wrong-type', "$path/0", $with(['1']));
            Check::refused('wrong-type', "$path/0/0", $with([array_fill(0, count($row), '1')]));
            Check::refused('not-finite', "$path/0/0", $with([$row, $row, $row]));
        }
    }
}

// Everything that is wrong comes at once.
$error = Check::refused('out-of-range', '/feed', fn () => Pourwright\piece_mass(10, 1030, feed: 3));
Check::that(count($error->faults) === 2 && $error->getCode() === 6);
Check::that($error->getMessage() === "{$error->faults[0]}\n{$error->faults[1]}", $error->getMessage());
$error = Check::refused('unknown-word', '/to_form', fn () => Pourwright\salt_convert(1, 1, 2, 'x', 1, 'y'));
Check::that(count($error->faults) === 2 && str_contains($error->getMessage(), 'Known: as-scooped, '));

Check::finish('table');
