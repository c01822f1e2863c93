<?php

declare(strict_types=1);

namespace Pourwright;

use FFI\CData;
use Pourwright\Internal\Handle;
use Pourwright\Internal\Json;
use Pourwright\Internal\Library;

/** A day's plan, with the book that it was made from. Show its `cautions` to the person who pours. */
final class Plan
{
    use Handle;

    private const KIND = 'plan';

    /**
     * Opens a plan again.
     *
     * @param string|array|object $plan What `json` gave
     * @throws PourwrightException All its faults.
     */
    public function __construct(string|array|object $plan)
    {
        $text = Json::text($plan);
        $this->handle = Library::handle('pour_plan', 'pour_plan_from_json', $text, strlen($text));
    }

    /** @internal */
    public static function ofHandle(CData $handle): self
    {
        $plan = (new \ReflectionClass(self::class))->newInstanceWithoutConstructor();
        $plan->handle = $handle;
        return $plan;
    }

    /**
     * Does the calculation of a request, which leaves `book` and `plan` out.
     *
     * @throws PourwrightException All faults of the request.
     */
    public function request(string|array|object $request): array
    {
        return Json::answered('pour_plan_request', $request, $this->held());
    }

    /** The plan as JSON, complete: to be stored, and opened again. */
    public function json(): string
    {
        return Library::text('pour_plan_json', $this->held());
    }

    /** The plan as an array, to read from: core/schema/plan.json. In it an empty object is an empty array. */
    public function toArray(): array
    {
        return Json::read($this->json());
    }

    /** The bench sheet: text of 80 columns. */
    public function sheet(): string
    {
        return Library::text('pour_plan_sheet', $this->held());
    }

    /** The notes to it: what to know beyond the sheet. */
    public function notes(): string
    {
        return Library::text('pour_plan_notes', $this->held());
    }
}
