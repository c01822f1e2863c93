<?php

declare(strict_types=1);

namespace Pourwright;

/** One fault: a stable code, its place as a JSON Pointer, what was found, and what would fix it. */
final class Fault
{
    public function __construct(
        public readonly string $code,
        public readonly string $path,
        public readonly string $message,
        public readonly string $help,
    ) {
    }

    /** The fault in one line. */
    public function __toString(): string
    {
        $place = $this->path === '' ? '' : "$this->path: ";
        return "$place$this->message $this->help [$this->code]";
    }
}
