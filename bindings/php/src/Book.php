<?php

declare(strict_types=1);

namespace Pourwright;

use Pourwright\Internal\Handle;
use Pourwright\Internal\Json;
use Pourwright\Internal\Library;

/** A shop's book, read once for many plans and requests. */
final class Book
{
    use Handle;

    private const KIND = 'book';

    /**
     * @param string|array|object $book JSON text, or what stands for it
     * @throws PourwrightException All faults of the book.
     */
    public function __construct(string|array|object $book)
    {
        $text = Json::text($book);
        $this->handle = Library::handle('pour_book', 'pour_book_from_json', $text, strlen($text));
    }

    /**
     * Plans the day of an order list.
     *
     * @param int|null $pots Maximum number of pots. Default: 5000.
     * @param int|null $thousand_steps Maximum work, in thousands of steps. Default: 10000.
     * @throws PourwrightException All faults of the order list, or why there is no plan.
     */
    public function plan(string|array|object $orders, ?int $pots = null, ?int $thousand_steps = null): Plan
    {
        $text = Json::text($orders);
        $none = Library::get()->POUR_OMITTED_COUNT;
        $faults = [];
        foreach (['pots' => $pots, 'thousand_steps' => $thousand_steps] as $name => $count) {
            if ($count !== null && ($count < 0 || $count >= $none)) {
                $help = 'Give a whole number from 0 to ' . $none - 1 . '.';
                $faults[] = new Fault('out-of-range', "/$name", "$name is $count, which is out of range.", $help);
            }
        }
        if ($faults !== []) {
            throw Library::refused(...$faults);
        }
        $budget = [$pots ?? $none, $thousand_steps ?? $none, null, null];
        $arguments = [$this->held(), $text, strlen($text), ...$budget];
        return Plan::ofHandle(Library::handle('pour_plan', 'pour_book_plan_within', ...$arguments));
    }

    /**
     * Does the calculation of a request, which leaves `book` out.
     *
     * @throws PourwrightException All faults of the request.
     */
    public function request(string|array|object $request): array
    {
        return Json::answered('pour_book_request', $request, $this->held());
    }
}
