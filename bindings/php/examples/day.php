<?php

// Plans a day: php day.php BOOK.json ORDERS.json prints the bench sheet, or all faults of the two files.

declare(strict_types=1);

use Pourwright\Book;
use Pourwright\PourwrightException;

require getenv('POURWRIGHT_AUTOLOAD') ?: 'vendor/autoload.php';

function text_of(string $path): string
{
    $text = @file_get_contents($path);
    if ($text === false) {
        fwrite(STDERR, "$path cannot be read.\n");
        exit(2);
    }
    return $text;
}

if ($argc !== 3) {
    fwrite(STDERR, "Usage: php day.php BOOK.json ORDERS.json\n");
    exit(2);
}
[, $book_path, $orders_path] = $argv;
$path = $book_path;
try {
    $book = new Book(text_of($book_path));
    $path = $orders_path;
    echo $book->plan(text_of($orders_path))->sheet(), "\n";
} catch (PourwrightException $error) {
    foreach ($error->faults as $fault) {
        fwrite(STDERR, "$path$fault->path: $fault->message $fault->help [$fault->code]\n");
    }
    exit(1);
}
