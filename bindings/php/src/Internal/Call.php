<?php

declare(strict_types=1);

namespace Pourwright\Internal;

use FFI;
use FFI\CData;
use Pourwright\Fault;

/** Calculations on plain numbers: PHP's arguments become those of a call to C, its results PHP's. */
final class Call
{
    /** An omitted number in C. */
    private const OMITTED = -PHP_FLOAT_MAX;

    /** The largest number means an omitted count. */
    private const MOST = 0xffff_fffe;

    /** @var list<Fault> */
    private array $faults = [];

    /** What C reads until the call is over. @var list<CData> */
    private array $kept = [];

    private function __construct(private readonly FFI $library)
    {
    }

    /**
     * The results of the calculation `$name`. Where `$input`, its arguments go in a struct; where `$result`, its results come
     * in one.
     *
     * @param list<array> $fields name, kind, value; then the words of a word, the name of the length of a list, and of rows
     *     also how many numbers one has and its struct
     * @param list<array> $results name, kind; then the words of a word, the length of a list
     */
    public static function of(string $name, array $fields, array $results, bool $input, bool $result): mixed
    {
        $call = new self(Library::get());
        $given = [];
        foreach ($fields as $field) {
            [$member, $kind, $value] = $field;
            $value = $value === null ? self::omitted($kind) : $call->read($field, $input);
            $given[$member] = $value;
            if ($kind === 'list' || $kind === 'rows') {
                $given[$field[3]] = $field[2] === null ? 0 : count($field[2]);
            }
        }
        if ($call->faults !== []) {
            throw Library::refused(...$call->faults);
        }
        if ($input) {
            $struct = $call->library->new("pour_{$name}_input");
            $struct->size = FFI::sizeof($struct);
            foreach ($given as $member => $value) {
                $struct->$member = $value;
            }
            $given = [FFI::addr($struct)];
        }
        $found = $call->library->new(match (true) {
            $result => "pour_{$name}_result",
            default => match ($results[0][1]) {
                'number' => 'double',
                'count' => 'uint32_t',
                'word' => 'int32_t',
            },
        });
        Library::checked("pour_$name", ...[...array_values($given), FFI::addr($found)]);
        if (!$result) {
            return $call->made($results[0], $found->cdata);
        }
        $made = [];
        foreach ($results as $one) {
            $made[$one[0]] = $call->made($one, $found->{$one[0]});
        }
        return $made;
    }

    private static function omitted(string $kind): float|int|null
    {
        return match ($kind) {
            'number' => self::OMITTED,
            'count' => Library::get()->POUR_OMITTED_COUNT,
            'word' => 0,
            default => null,
        };
    }

    private function read(array $field, bool $input): mixed
    {
        [$name, $kind, $value] = $field;
        return match ($kind) {
            'number' => $this->number("/$name", $value),
            'count' => $this->count("/$name", $value),
            'word' => $this->word("/$name", $value, $field[3]),
            'text' => $this->text("/$name", $value, $input),
            'list' => $this->numbers("/$name", $value),
            'rows' => $this->rows("/$name", $value, $field[4], $field[5]),
        };
    }

    private function fault(string $code, string $path, string $message, string $help): void
    {
        $this->faults[] = new Fault($code, $path, $message, $help);
    }

    private function number(string $path, mixed $value): float
    {
        $name = substr($path, 1);
        if (!is_int($value) && !is_float($value)) {
            $message = "$name must be a number, not " . get_debug_type($value) . '.';
            $this->fault('wrong-type', $path, $message, 'Pass a number.');
            return 0;
        }
        if ((float) $value === self::OMITTED) {
            $this->fault('out-of-range', $path, "$name is $value, which is out of range.", 'Check the number.');
        }
        return $value;
    }

    private function count(string $path, int $value): int
    {
        if ($value < 0 || $value > self::MOST) {
            $message = substr($path, 1) . " is $value, which is out of range.";
            $this->fault('out-of-range', $path, $message, 'Give a whole number from 0 to ' . self::MOST . '.');
            return 0;
        }
        return $value;
    }

    /** @param list<string> $words */
    private function word(string $path, string $value, array $words): int
    {
        $place = array_search($value, $words, true);
        if ($place === false) {
            $message = "\"$value\" is not a word for " . substr($path, 1) . '.';
            $this->fault('unknown-word', $path, $message, 'Known: ' . implode(', ', $words) . '.');
            return 0;
        }
        return $place + 1;
    }

    /** A text for C: PHP hands it to a call by itself, but not to a struct. */
    private function text(string $path, string $value, bool $input): string|CData
    {
        if (str_contains($value, "\0")) {
            $message = substr($path, 1) . ' must not have a NUL character.';
            $this->fault('wrong-type', $path, $message, 'Remove it.');
            return '';
        }
        if (!$input) {
            return $value;
        }
        $made = $this->keep('char', strlen($value) + 1);
        FFI::memcpy($made, $value . "\0", strlen($value) + 1);
        return $this->library->cast('char *', $made);
    }

    /** Memory for an array of at least one item. */
    private function keep(string $item, int $count): CData
    {
        $made = $this->library->new("{$item}[" . max($count, 1) . ']');
        $this->kept[] = $made;
        return $made;
    }

    private function numbers(string $path, array $values): CData
    {
        $made = $this->keep('double', count($values));
        foreach (array_values($values) as $index => $value) {
            $made[$index] = $this->number("$path/$index", $value);
        }
        return $this->library->cast('double *', $made);
    }

    private function rows(string $path, array $rows, int $columns, string $item): CData
    {
        $numbers = $this->keep('double', $columns * count($rows));
        foreach (array_values($rows) as $index => $row) {
            if (!is_array($row) || count($row) !== $columns) {
                $message = substr($path, 1) . "/$index must be $columns numbers.";
                $this->fault('wrong-type', "$path/$index", $message, "Pass an array of $columns numbers.");
                continue;
            }
            foreach (array_values($row) as $column => $value) {
                $numbers[$index * $columns + $column] = $this->number("$path/$index/$column", $value);
            }
        }
        // A struct of numbers only: a pointer to one may point to numbers.
        return $this->library->cast("$item *", $this->library->cast('double *', $numbers));
    }

    /** A result of C as PHP has it. */
    private function made(array $result, mixed $value): mixed
    {
        return match ($result[1]) {
            'number' => is_nan($value) ? null : $value,
            'count' => $value === $this->library->POUR_OMITTED_COUNT ? null : $value,
            'word' => $result[2][$value - 1] ?? null,
            'list' => array_map(fn (int $index) => $value[$index], range(0, $result[2] - 1)),
        };
    }
}
