<?php

// What the tests share.

declare(strict_types=1);

use Pourwright\PourwrightException;

require getenv('POURWRIGHT_AUTOLOAD');

// A notice or a warning is a failure.
set_error_handler(function (int $kind, string $message, string $file, int $line): never {
    throw new ErrorException($message, 0, $kind, $file, $line);
});

final class Check
{
    public static int $count = 0;
    public static int $failures = 0;

    public static function textOf(string $path): string
    {
        return file_get_contents(getenv('POURWRIGHT_ROOT') . "/$path");
    }

    /** Counts, and prints what does not hold. */
    public static function that(bool $holds, string $what = 'does not hold'): void
    {
        self::$count++;
        if (!$holds) {
            self::$failures++;
            $at = debug_backtrace(DEBUG_BACKTRACE_IGNORE_ARGS, 2);
            $at = array_key_exists('line', $at[0]) && $at[0]['file'] !== __FILE__ ? $at[0] : $at[1];
            fwrite(STDERR, basename($at['file']) . ":{$at['line']}: $what\n");
        }
    }

    /** Whether two values are the same, numbers by their bits. */
    public static function same(mixed $one, mixed $other): bool
    {
        if (is_float($one) && is_float($other)) {
            return pack('d', $one) === pack('d', $other);
        }
        if (is_object($one) && is_object($other)) {
            [$one, $other] = [(array) $one, (array) $other];
        }
        if (!is_array($one) || !is_array($other)) {
            return $one === $other;
        }
        foreach ($one as $name => $value) {
            if (!array_key_exists($name, $other) || !self::same($value, $other[$name])) {
                return false;
            }
        }
        return count($one) === count($other);
    }

    /** Checks that a call is refused with this fault among its faults; gives the exception. */
    public static function refused(string $code, string $path, callable $call): ?PourwrightException
    {
        try {
            $call();
        } catch (PourwrightException $error) {
            foreach ($error->faults as $fault) {
                if ($fault->code === $code && $fault->path === $path && $fault->message !== '' && $fault->help !== '') {
                    self::$count++;
                    return $error;
                }
            }
            self::that(false, "no $code at $path: {$error->getMessage()}");
            return $error;
        }
        self::that(false, "no $code at $path: not refused");
        return null;
    }

    /** Checks that a call throws an error of PHP itself. */
    public static function throws(string $kind, callable $call): void
    {
        try {
            $call();
        } catch (Throwable $error) {
            self::that($error instanceof $kind, get_class($error) . ": {$error->getMessage()}");
            return;
        }
        self::that(false, "no $kind");
    }

    /** Ends the test. */
    public static function finish(string $name): never
    {
        if (self::$failures > 0) {
            fwrite(STDERR, "$name: " . self::$failures . ' of ' . self::$count . " checks failed\n");
            exit(1);
        }
        echo "$name: ", self::$count, " checks\n";
        exit(0);
    }
}
