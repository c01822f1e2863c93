<?php

declare(strict_types=1);

namespace Pourwright;

/**
 * A refused call. `$faults` has all that is wrong with it, each with code, path, message and help; the message of the exception
 * has them as text, one a line, and its code is the status of the C library.
 */
final class PourwrightException extends \RuntimeException
{
    /** @param non-empty-list<Fault> $faults */
    public function __construct(public readonly array $faults, int $status)
    {
        parent::__construct(implode("\n", $faults), $status);
    }
}
