//! The demo day from its text to its plan, and generated days of 100 to 10 000 order lines.
//!
//! Goal: 1 000 lines in less than 10 ms on one core, and time that grows no faster than the lines.

use std::hint::black_box;

use criterion::{BenchmarkId, Criterion, Throughput, criterion_group, criterion_main};
use pourwright::document::{LoadedBook, OrdersDocument};
use pourwright::plan::Plan;
use pourwright::plan::day::Day;
use pourwright_benches::day;

const DEMO_BOOK: &str = include_str!("../core/examples/demo/book.json");
const DEMO_ORDERS: &str = include_str!("../core/examples/demo/orders.json");

fn demo(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("demo day");
    let book = LoadedBook::from_text(DEMO_BOOK).expect("the demo book");
    let read = |orders: &str| {
        OrdersDocument::from_text(orders).and_then(|it| Day::resolve(&it, book.ready()))
    };
    let day = read(DEMO_ORDERS).expect("the demo orders");
    group.bench_function("read the book", |bencher| {
        bencher.iter(|| LoadedBook::from_text(black_box(DEMO_BOOK)));
    });
    group.bench_function("read the orders", |bencher| {
        bencher.iter(|| read(black_box(DEMO_ORDERS)));
    });
    group.bench_function("plan", |bencher| {
        bencher.iter(|| Plan::make(black_box(book.ready()), black_box(&day)));
    });
    group.bench_function("all of it, to the sheet's text", |bencher| {
        bencher.iter(|| {
            let book = LoadedBook::from_text(black_box(DEMO_BOOK))?;
            book.plan_text(black_box(DEMO_ORDERS)).map(|made| made.sheet().to_string())
        });
    });
    group.finish();
}

fn days(criterion: &mut Criterion) {
    for formulas in [20, 100, 500] {
        let mut group = criterion.benchmark_group(format!("day over {formulas} formulas"));
        group.sample_size(10);
        let book = LoadedBook::from_text(&day::book(formulas)).expect("a book");
        let read = |orders: &str| {
            OrdersDocument::from_text(orders).and_then(|it| Day::resolve(&it, book.ready()))
        };
        for lines in [100, 1_000, 10_000] {
            let orders = day::orders(lines, formulas);
            let day = read(&orders).expect("orders");
            group.throughput(Throughput::Elements(lines as u64));
            group.bench_function(BenchmarkId::new("plan", lines), |bencher| {
                bencher.iter(|| Plan::make(black_box(book.ready()), black_box(&day)));
            });
            group.bench_function(BenchmarkId::new("read the orders", lines), |bencher| {
                bencher.iter(|| read(black_box(&orders)));
            });
        }
        group.finish();
    }
}

criterion_group!(benches, demo, days);
criterion_main!(benches);
