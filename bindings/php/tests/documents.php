<?php

// Books, plans, requests: right, wrong and odd.

declare(strict_types=1);

use Pourwright\Book;
use Pourwright\Plan;

require __DIR__ . '/check.php';

$book_text = Check::textOf('core/examples/demo/book.json');
$orders_text = Check::textOf('core/examples/demo/orders.json');
Check::that(Pourwright\version() === getenv('POURWRIGHT_VERSION'), Pourwright\version());

// A book and a plan.
$book = new Book($book_text);
$plan = $book->plan($orders_text);
Check::that(str_contains($plan->sheet(), 'ORDER OF WORK') && str_contains($plan->notes(), 'COST in USD'));
Check::that($plan->toArray()['pots'][0]['pot'] === 'A' && isset($plan->toArray()['made_from']));
$of_values = (new Book(json_decode($book_text)))->plan(json_decode($orders_text));
Check::that($of_values->sheet() === $plan->sheet());
$again = new Plan($plan->json());
Check::that($again->json() === $plan->json());
Check::that((new Plan(json_decode($plan->json())))->sheet() === $plan->sheet());

// Requests of what is open.
$formula = ['calculate' => 'formula', 'formulas' => ['dusk', 'plain'], 'base_amount' => '1 cup'];
Check::that(Check::same($book->request($formula), $plan->request(json_encode($formula))));
$record = ['calculate' => 'record', 'actuals' => ['format' => 'pourwright/1.0', 'pots' => (object) []]];
Check::that(Check::same($plan->request($record), $again->request($record)));
Check::refused('missing-field', '', fn () => $book->request($record));
Check::refused('missing-field', '', fn () => Pourwright\calculate($formula));
Check::refused('missing-field', '', fn () => $plan->request('{}'));
Check::refused('open-and-given', '/book', fn () => $book->request([...$formula, 'book' => json_decode($book_text)]));

// Budgets.
Check::that($book->plan($orders_text, pots: 5, thousand_steps: 1000)->json() === $plan->json());
Check::refused('budget-pots', '', fn () => $book->plan($orders_text, pots: 1));
Check::refused('budget-work', '', fn () => $book->plan($orders_text, thousand_steps: 0));
foreach ([-1, 2 ** 32 - 1, PHP_INT_MAX] as $wrong) {
    Check::refused('out-of-range', '/pots', fn () => $book->plan($orders_text, pots: $wrong));
}

// Wrong documents have all their faults.
$wrong = json_decode($book_text, true);
$wrong['materials']['clear-base']['density'] = '6 oz';
$wrong['molds']['no-mold'] = (object) [];
$error = Check::refused('amount-ambiguous', '/materials/clear-base/density', fn () => new Book($wrong));
Check::that(count($error->faults) > 1 && $error->getCode() === 6);
Check::refused('not-json', '', fn () => new Book('{'));
Check::refused('not-utf8', '/json', fn () => new Book("\xff"));
Check::refused('too-large', '/json', fn () => new Book(str_repeat(' ', 16 * 1024 * 1024 + 1)));
Check::refused('not-json', '', fn () => $book->plan('['));
$padle = str_replace('reed paddle', 'reed padle', $orders_text);
Check::refused('unknown-name', '/lines/2/product', fn () => $book->plan($padle));
Check::refused('wrong-type', '', fn () => new Plan('[]'));
Check::throws(TypeError::class, fn () => new Book(5));
Check::throws(TypeError::class, fn () => Pourwright\calculate(null));
Check::throws(TypeError::class, fn () => Pourwright\answer_text([]));

// Values that no JSON has.
foreach (['not-finite' => NAN, 'not-utf8' => "\xff", 'wrong-type' => fopen('php://memory', 'r')] as $code => $odd) {
    Check::refused($code, '', fn () => Pourwright\calculate(['calculate' => 'convert', 'amount' => $odd]));
}
$circle = new stdClass();
$circle->circle = $circle;
Check::refused('wrong-type', '', fn () => Pourwright\calculate($circle));

// Numbers keep their bits, whatever the host has set.
ini_set('serialize_precision', '5');
$third = ['calculate' => 'convert', 'amount' => ['value' => 1 / 3, 'unit' => 'g'], 'to' => 'g'];
Check::that(Pourwright\calculate($third)['value'] === 1 / 3);
Check::that(ini_get('serialize_precision') === '5');
ini_set('serialize_precision', '-1');

// Handles.
$plan->close();
$plan->close();
Check::refused('plan-freed', '', fn () => $plan->sheet());
Check::refused('plan-freed', '', fn () => $plan->request($record));
$book->close();
$book->close();
Check::refused('book-freed', '', fn () => $book->plan($orders_text));
Check::that(str_contains($again->sheet(), 'ORDER OF WORK'), 'a plan outlives its book');
Check::throws(Error::class, fn () => clone $again);
Check::throws(Exception::class, fn () => serialize($again));
for ($i = 0; $i < 200; $i++) {
    new Book($book_text);
}

// Texts of requests.
$nul = Pourwright\answer_text('{"calculate":"convert","amount":"1 cup","to":"mL"}' . "\0");
Check::that(str_contains($nul, '"not-json"'), $nul);
Check::that(str_starts_with(Pourwright\answer_text(''), '{"faults":'));

// Schemas.
$orders_schema = json_decode(Check::textOf('core/schema/orders.json'), true);
Check::that(Check::same(Pourwright\schema('orders'), $orders_schema));
$error = Check::refused('no-such-schema', '/name', fn () => Pourwright\schema('shop'));
Check::that(str_contains($error->faults[0]->help, 'request'));
Check::refused('wrong-type', '/name', fn () => Pourwright\schema("orders\0"));

Check::finish('documents');
