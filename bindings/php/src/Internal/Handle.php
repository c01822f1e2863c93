<?php

declare(strict_types=1);

namespace Pourwright\Internal;

use FFI\CData;
use Pourwright\Fault;

/** A handle of the C library, freed with the object or by `close`. */
trait Handle
{
    private ?CData $handle;

    /** Frees the memory now. */
    public function close(): void
    {
        if ($this->handle !== null) {
            $free = 'pour_' . self::KIND . '_free';
            Library::get()->$free($this->handle);
            $this->handle = null;
        }
    }

    public function __destruct()
    {
        if (isset($this->handle)) {
            $this->close();
        }
    }

    private function __clone()
    {
    }

    private function held(): CData
    {
        return $this->handle
            ?? throw Library::refused(
                new Fault(self::KIND . '-freed', '', 'The ' . self::KIND . ' has been closed.', 'Open it again.'),
            );
    }
}
