//! Finds what can be mutated in a source file, and how.
//!
//! A site is an expression, a statement or a body of a function with one or more mutants. Each becomes a wrapper of text
//! around the source, which stays as it is: no operand is written twice, and nothing is formatted again.

use std::collections::BTreeMap;
use std::ops::Range;

use proc_macro2::{TokenStream, TokenTree};
use syn::parse::Parser;
use syn::punctuated::Punctuated;
use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::{BinOp, Expr, Lit, ReturnType, Stmt, Token, Type, UnOp};

/// A mutant of a site.
#[derive(Debug, Clone)]
pub struct Mutant {
    /// File, function, operator and the how-manieth of its kind in the function: the same when other lines change.
    pub name: String,
    /// The number that switches it on; 0 if it is not compiled in.
    pub id: u32,
}

/// How the text around a site switches its mutants.
#[derive(Debug, Clone)]
pub enum Wrap {
    /// `l op r`, both evaluated once: the operator's place, the original and one text for each mutant.
    Binary { operator: Range<usize>, by_reference: bool, original: String, mutated: Vec<String> },
    /// `l && r` and `l || r`, which may not evaluate `r`.
    Lazy { operator: Range<usize>, and: bool },
    /// `place op= r`.
    Assign { place: String, head: Range<usize>, original: String, mutated: String },
    /// A condition, which is negated.
    Negate,
    /// A guard, which is always true or never.
    Guard,
    /// `-x`, whose sign is left out; the place of the sign.
    Sign { operator: Range<usize> },
    /// An expression that evaluates nothing (a literal, a path of a function), and what is there instead.
    Instead(String),
    /// A statement that is left out.
    Omit,
    /// A body of a function that returns at once; one value for each mutant.
    Return(Vec<String>),
}

/// A place with mutants.
#[derive(Debug, Clone)]
pub struct Site {
    /// Bytes of the source.
    pub range: Range<usize>,
    pub wrap: Wrap,
    pub mutants: Vec<Mutant>,
    /// Taken if the first does not compile, as `*` to `/` between quantities of other dimensions does not.
    pub fallback: Option<(Wrap, Vec<Mutant>)>,
}

/// What a file has.
#[derive(Debug, Default)]
pub struct Sites {
    pub sites: Vec<Site>,
    /// Mutants in constants, and macros whose input is not a list of expressions.
    pub frozen: usize,
    /// Modules that have a file of their own.
    pub modules: Vec<String>,
}

/// The sites of the file `file` with this `text`.
pub fn find(file: &str, text: &str) -> Sites {
    let tree = syn::parse_file(text).unwrap_or_else(|error| panic!("{file}: {error}"));
    let mut finder = Finder {
        file,
        text,
        found: Sites::default(),
        frozen: 0,
        path: Vec::new(),
        seen: BTreeMap::new(),
    };
    finder.visit_file(&tree);
    finder.found
}

struct Finder<'a> {
    file: &'a str,
    text: &'a str,
    found: Sites,
    /// Above 0 in what is evaluated by the compiler.
    frozen: usize,
    path: Vec<String>,
    seen: BTreeMap<String, usize>,
}

impl Finder<'_> {
    fn name(&mut self, what: &str) -> Mutant {
        let path = format!("{} {}", self.file, self.path.join("::"));
        let key = format!("{path}: {what}");
        let ordinal = self.seen.entry(key.clone()).or_default();
        *ordinal += 1;
        Mutant { name: format!("{key} #{ordinal}"), id: 0 }
    }

    fn add(&mut self, range: Range<usize>, wrap: Wrap, whats: &[String]) {
        self.add_or(range, wrap, whats, None);
    }

    fn add_or(
        &mut self,
        range: Range<usize>,
        wrap: Wrap,
        whats: &[String],
        or: Option<(Wrap, String)>,
    ) {
        if self.path.is_empty() || self.frozen > 0 {
            self.found.frozen += whats.len();
            return;
        }
        let mutants = whats.iter().map(|what| self.name(what)).collect();
        let fallback = or.map(|(wrap, what)| (wrap, vec![self.name(&what)]));
        self.found.sites.push(Site { range, wrap, mutants, fallback });
    }

    fn frozen(&mut self, inside: impl FnOnce(&mut Self)) {
        self.frozen += 1;
        inside(self);
        self.frozen -= 1;
    }

    fn within(&mut self, name: String, inside: impl FnOnce(&mut Self)) {
        self.path.push(name);
        inside(self);
        self.path.pop();
    }

    fn function(&mut self, signature: &syn::Signature, body: &syn::Block) {
        let name = signature.ident.to_string();
        self.within(name, |this| {
            let visit = |this: &mut Self| {
                this.body(&signature.output, body);
                this.visit_block(body);
            };
            if signature.constness.is_some() { this.frozen(visit) } else { visit(this) }
        });
    }

    fn body(&mut self, output: &ReturnType, body: &syn::Block) {
        if body.stmts.is_empty() {
            return;
        }
        let values = match output {
            ReturnType::Default => vec![String::new()],
            ReturnType::Type(_, of) => values(of),
        };
        if values.is_empty() {
            return;
        }
        let whats: Vec<_> = values
            .iter()
            .map(|value| {
                if value.is_empty() {
                    "body to ()".into()
                } else {
                    format!("body to {}", short(value))
                }
            })
            .collect();
        let start = body.brace_token.span.open().byte_range().end;
        self.add(start..start, Wrap::Return(values), &whats);
    }

    fn binary(&mut self, node: &syn::ExprBinary) {
        let operator = node.op.span().byte_range();
        let range = node.span().byte_range();
        let sign = self.text[operator.clone()].to_owned();
        let swapped: &[&str] = match node.op {
            BinOp::Add(_) => &["-"],
            BinOp::Sub(_) => &["+"],
            BinOp::Mul(_) => &["/"],
            BinOp::Div(_) => &["*"],
            BinOp::Rem(_) => &["/"],
            BinOp::Eq(_) => &["!="],
            BinOp::Ne(_) => &["=="],
            BinOp::Lt(_) => &["<=", ">="],
            BinOp::Le(_) => &["<", ">"],
            BinOp::Gt(_) => &[">=", "<="],
            BinOp::Ge(_) => &[">", "<"],
            BinOp::BitAnd(_) => &["|"],
            BinOp::BitOr(_) => &["&"],
            BinOp::Shl(_) => &[">>"],
            BinOp::Shr(_) => &["<<"],
            BinOp::And(_) | BinOp::Or(_) => {
                if has_let(&node.left) || has_let(&node.right) {
                    return;
                }
                let and = matches!(node.op, BinOp::And(_));
                let other = if and { "||" } else { "&&" };
                return self.add(
                    range,
                    Wrap::Lazy { operator, and },
                    &[format!("{sign} to {other}")],
                );
            }
            BinOp::AddAssign(_)
            | BinOp::SubAssign(_)
            | BinOp::MulAssign(_)
            | BinOp::DivAssign(_)
            | BinOp::BitAndAssign(_)
            | BinOp::BitOrAssign(_) => {
                let other = match sign.as_str() {
                    "+=" => "-=",
                    "-=" => "+=",
                    "*=" => "/=",
                    "/=" => "*=",
                    "&=" => "|=",
                    _ => "&=",
                };
                let place = self.text[node.left.span().byte_range()].to_owned();
                let head = range.start..operator.end;
                let what = format!("{sign} to {other}");
                return self.add(
                    range,
                    Wrap::Assign { place, head, original: sign, mutated: other.into() },
                    &[what],
                );
            }
            _ => return,
        };
        let compares = matches!(
            node.op,
            BinOp::Eq(_) | BinOp::Ne(_) | BinOp::Lt(_) | BinOp::Le(_) | BinOp::Gt(_) | BinOp::Ge(_)
        );
        let star = if compares { "*" } else { "" };
        let with = |sign: &str| format!("{star}l {sign} {star}r");
        let whats: Vec<_> = swapped.iter().map(|other| format!("{sign} to {other}")).collect();
        let wrap = |mutated| Wrap::Binary {
            operator: operator.clone(),
            by_reference: compares,
            original: with(&sign),
            mutated,
        };
        let doubled = matches!(node.op, BinOp::Mul(_) | BinOp::Div(_))
            .then(|| (wrap(vec![format!("(l {sign} r) * 2.0")]), format!("{sign} doubled")));
        self.add_or(
            range,
            wrap(swapped.iter().map(|other| with(other)).collect()),
            &whats,
            doubled,
        );
    }

    fn literal(&mut self, lit: &Lit, range: Range<usize>) {
        match lit {
            Lit::Int(int) => {
                let Ok(value) = int.base10_parse::<u128>() else { return };
                let other = match value {
                    0 => 1,
                    1 => 0,
                    n => n + 1,
                };
                let what = format!("{value} to {other}");
                self.add(range, Wrap::Instead(format!("{other}{}", int.suffix())), &[what]);
            }
            Lit::Float(float) => {
                let Ok(value) = float.base10_parse::<f64>() else { return };
                let other = if value == 0.0 { 1.0 } else { 2.0 * value };
                let what = format!("{} to {other:?}", float.base10_digits());
                self.add(range, Wrap::Instead(format!("{other:?}{}", float.suffix())), &[what]);
            }
            Lit::Bool(value) => {
                let what = format!("{} to {}", value.value, !value.value);
                self.add(range, Wrap::Instead((!value.value).to_string()), &[what]);
            }
            _ => {}
        }
    }

    /// A condition that is neither an operator nor a negation, which have mutants of their own.
    fn condition(&mut self, of: &Expr) {
        let plain = match of {
            Expr::MethodCall(call) => !gives_bool(&call.method.to_string()),
            Expr::Path(_) | Expr::Field(_) | Expr::Call(_) | Expr::Index(_) => true,
            _ => false,
        };
        if plain {
            self.add(of.span().byte_range(), Wrap::Negate, &["condition negated".into()]);
        }
    }

    fn statement(&mut self, of: &Stmt) {
        let Stmt::Expr(Expr::MethodCall(call), Some(_)) = of else { return };
        let method = call.method.to_string();
        if CHANGES.contains(&method.as_str()) && !has_try(&Expr::MethodCall(call.clone())) {
            self.add(of.span().byte_range(), Wrap::Omit, &[format!(".{method}() omitted")]);
        }
    }

    fn tokens_of(&mut self, mac: &syn::Macro) {
        let name = mac.path.segments.last().map(|last| last.ident.to_string()).unwrap_or_default();
        match name.as_str() {
            "matches" => {
                // The pattern is not an expression; the one before it is.
                let parser = |input: syn::parse::ParseStream<'_>| {
                    let first: Expr = input.parse()?;
                    let _: TokenStream = input.parse()?;
                    Ok(first)
                };
                if let Ok(first) = parser.parse2(mac.tokens.clone()) {
                    self.visit_expr(&first);
                }
            }
            "format" | "write" | "writeln" | "vec" => {
                let list = Punctuated::<Expr, Token![,]>::parse_terminated;
                match list.parse2(mac.tokens.clone()) {
                    Ok(list) => list.iter().for_each(|item| self.visit_expr(item)),
                    Err(_) => self.found.frozen += 1,
                }
            }
            "debug_assert" | "debug_assert_eq" | "include_str" | "concat" => {}
            _ if has_operator(mac.tokens.clone()) => self.found.frozen += 1,
            _ => {}
        }
    }
}

/// Calls that change what they are called on, for their effect alone.
const CHANGES: &[&str] = &[
    "push",
    "push_str",
    "extend",
    "extend_from_slice",
    "append",
    "insert",
    "remove",
    "pop",
    "clear",
    "retain",
    "truncate",
    "dedup",
    "dedup_by",
    "dedup_by_key",
    "reverse",
    "sort",
    "sort_by",
    "sort_by_key",
    "sort_unstable",
    "sort_unstable_by",
    "sort_unstable_by_key",
    "swap",
    "fill",
    "resize",
    "drain",
    "rotate_left",
    "rotate_right",
    "push_back",
    "push_front",
    "pop_back",
    "pop_front",
];

/// Whether calls of this name give a `bool`.
fn gives_bool(method: &str) -> bool {
    method.starts_with("is_")
        || method.starts_with("has_")
        || matches!(
            method,
            "contains" | "contains_key" | "any" | "all" | "starts_with" | "ends_with" | "eq" | "ne"
        )
}

fn has_let(of: &Expr) -> bool {
    match of {
        Expr::Let(_) => true,
        Expr::Binary(binary) => has_let(&binary.left) || has_let(&binary.right),
        Expr::Paren(inner) => has_let(&inner.expr),
        _ => false,
    }
}

fn has_try(of: &Expr) -> bool {
    struct Tries(bool);
    impl<'a> Visit<'a> for Tries {
        fn visit_expr_try(&mut self, _: &'a syn::ExprTry) {
            self.0 = true;
        }
    }
    let mut tries = Tries(false);
    tries.visit_expr(of);
    tries.0
}

fn has_operator(tokens: TokenStream) -> bool {
    tokens.into_iter().any(|token| match token {
        TokenTree::Punct(punct) => matches!(punct.as_char(), '+' | '*' | '/' | '<'),
        TokenTree::Group(group) => has_operator(group.stream()),
        _ => false,
    })
}

fn is_test(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        let path = attribute.path();
        let named = |name: &str| path.segments.last().is_some_and(|last| last.ident == name);
        named("test")
            || named("rstest")
            || named("cfg")
                && attribute.parse_args::<Expr>().is_ok_and(|inner| match inner {
                    Expr::Path(path) => path.path.is_ident("test") || path.path.is_ident("doctest"),
                    Expr::Call(call) => match &*call.func {
                        Expr::Path(path) if !path.path.is_ident("not") => call.args.iter().any(|argument| {
                            matches!(argument, Expr::Path(path) if path.path.is_ident("doctest") || path.path.is_ident("test"))
                        }),
                        _ => false,
                    },
                    _ => false,
                })
    })
}

/// Simple values of a type; none if it has none.
fn values(of: &Type) -> Vec<String> {
    const DEFAULT: &str = "::core::default::Default::default()";
    match of {
        Type::Tuple(tuple) if tuple.elems.is_empty() => vec!["()".into()],
        Type::Reference(reference) => match &*reference.elem {
            Type::Path(path) if path.path.is_ident("str") => vec!["\"\"".into()],
            Type::Slice(_) if reference.mutability.is_none() => vec!["&[]".into()],
            _ => Vec::new(),
        },
        Type::Path(path) => {
            let Some(last) = path.path.segments.last() else { return Vec::new() };
            let inner = || match &last.arguments {
                syn::PathArguments::AngleBracketed(arguments) => {
                    arguments.args.iter().find_map(|argument| match argument {
                        syn::GenericArgument::Type(of) => Some(of.clone()),
                        _ => None,
                    })
                }
                _ => None,
            };
            match last.ident.to_string().as_str() {
                "bool" => vec!["false".into(), "true".into()],
                "f64" => vec!["0.0".into(), "1.0".into()],
                "usize" | "u8" | "u16" | "u32" | "u64" | "u128" | "isize" | "i8" | "i16"
                | "i32" | "i64" | "i128" => {
                    vec!["0".into(), "1".into()]
                }
                "Option" => vec!["::core::option::Option::None".into()],
                "String"
                | "Vec"
                | "BTreeMap"
                | "BTreeSet"
                | "VecDeque"
                | "Cow"
                | "Mass"
                | "Volume"
                | "MassDensity"
                | "Ratio"
                | "ThermodynamicTemperature"
                | "TemperatureInterval"
                | "Pressure"
                | "Time"
                | "Length"
                | "Velocity"
                | "Energy"
                | "Power"
                | "Rational"
                | "BigRational" => vec![DEFAULT.into()],
                "Ordering" => vec!["::core::cmp::Ordering::Equal".into()],
                "Result" => match inner() {
                    Some(of) => values(&of)
                        .iter()
                        .map(|value| format!("::core::result::Result::Ok({value})"))
                        .collect(),
                    None if path.path.segments.iter().any(|segment| segment.ident == "fmt") => {
                        vec!["::core::result::Result::Ok(())".into()]
                    }
                    None => Vec::new(),
                },
                _ => Vec::new(),
            }
        }
        _ => Vec::new(),
    }
}

fn short(value: &str) -> String {
    [
        "::core::default::Default::",
        "::core::option::Option::",
        "::core::result::Result::",
        "::core::cmp::",
    ]
    .iter()
    .fold(value.to_owned(), |text, long| text.replace(long, ""))
}

impl<'a> Visit<'a> for Finder<'_> {
    fn visit_item(&mut self, node: &'a syn::Item) {
        match node {
            syn::Item::Mod(item) => {
                if is_test(&item.attrs) {
                    return;
                }
                match &item.content {
                    None => self.found.modules.push(item.ident.to_string()),
                    Some((_, items)) => {
                        self.within(item.ident.to_string(), |this| {
                            items.iter().for_each(|item| this.visit_item(item))
                        });
                    }
                }
            }
            syn::Item::Fn(item) => {
                if !is_test(&item.attrs) {
                    self.function(&item.sig, &item.block);
                }
            }
            syn::Item::Const(item) => self.frozen(|this| this.visit_expr(&item.expr)),
            syn::Item::Static(item) => self.frozen(|this| this.visit_expr(&item.expr)),
            syn::Item::Impl(item) => {
                if is_test(&item.attrs) {
                    return;
                }
                let name = match &*item.self_ty {
                    Type::Path(path) => {
                        path.path.segments.last().map(|last| last.ident.to_string())
                    }
                    Type::Reference(_) => Some("&".into()),
                    _ => None,
                };
                self.within(name.unwrap_or_default(), |this| {
                    item.items.iter().for_each(|item| this.visit_impl_item(item))
                });
            }
            syn::Item::Trait(item) => {
                self.within(item.ident.to_string(), |this| {
                    item.items.iter().for_each(|item| this.visit_trait_item(item))
                });
            }
            syn::Item::Macro(item) => {
                if item.ident.is_none() {
                    self.tokens_of(&item.mac);
                } else if has_operator(item.mac.tokens.clone()) {
                    self.found.frozen += 1;
                }
            }
            _ => {}
        }
    }

    fn visit_impl_item(&mut self, node: &'a syn::ImplItem) {
        match node {
            syn::ImplItem::Fn(item) if !is_test(&item.attrs) => {
                self.function(&item.sig, &item.block)
            }
            syn::ImplItem::Const(item) => self.frozen(|this| this.visit_expr(&item.expr)),
            _ => {}
        }
    }

    fn visit_trait_item(&mut self, node: &'a syn::TraitItem) {
        if let syn::TraitItem::Fn(item) = node
            && let Some(body) = &item.default
        {
            self.function(&item.sig, body);
        }
    }

    fn visit_attribute(&mut self, _: &'a syn::Attribute) {}
    fn visit_type(&mut self, _: &'a Type) {}
    fn visit_pat(&mut self, _: &'a syn::Pat) {}
    fn visit_angle_bracketed_generic_arguments(
        &mut self,
        _: &'a syn::AngleBracketedGenericArguments,
    ) {
    }

    fn visit_macro(&mut self, node: &'a syn::Macro) {
        self.tokens_of(node);
    }

    fn visit_stmt(&mut self, node: &'a Stmt) {
        self.statement(node);
        visit::visit_stmt(self, node);
    }

    fn visit_arm(&mut self, node: &'a syn::Arm) {
        if let Some((_, guard)) = &node.guard
            && !has_let(guard)
        {
            let whats = ["guard to true".to_owned(), "guard to false".to_owned()];
            self.add(guard.span().byte_range(), Wrap::Guard, &whats);
        }
        visit::visit_arm(self, node);
    }

    fn visit_expr(&mut self, node: &'a Expr) {
        let range = node.span().byte_range();
        match node {
            Expr::Binary(binary) => {
                self.binary(binary);
                let assigns = matches!(self.text[binary.op.span().byte_range()].as_bytes(), [first, .., b'='] if !matches!(first, b'=' | b'!' | b'<' | b'>'));
                if !assigns {
                    self.visit_expr(&binary.left);
                }
                self.visit_expr(&binary.right);
                return;
            }
            Expr::Unary(unary) => match unary.op {
                UnOp::Not(_) => {
                    self.add(range, Wrap::Negate, &["! removed".into()]);
                    // A call below it would have the same mutant again.
                    match &*unary.expr {
                        Expr::MethodCall(call) => return visit::visit_expr_method_call(self, call),
                        Expr::Macro(_) => {}
                        _ => {}
                    }
                }
                UnOp::Neg(_) => {
                    let operator = unary.op.span().byte_range();
                    self.add(range, Wrap::Sign { operator }, &["- removed".into()]);
                }
                _ => {}
            },
            Expr::Lit(lit) => self.literal(&lit.lit, range),
            Expr::If(node) => self.condition(&node.cond),
            Expr::While(node) => self.condition(&node.cond),
            Expr::Macro(inner) if inner.mac.path.is_ident("matches") => {
                self.add(range, Wrap::Negate, &["matches! negated".into()]);
            }
            Expr::MethodCall(call) => {
                let method = call.method.to_string();
                if gives_bool(&method) {
                    self.add(range, Wrap::Negate, &[format!(".{method}() negated")]);
                } else if call.args.len() == 1 && (method == "min" || method == "max") {
                    let other = if method == "min" { "max" } else { "min" };
                    let start = call.dot_token.span.byte_range().start;
                    let end = call.paren_token.span.open().byte_range().end;
                    let wrap = Wrap::Binary {
                        operator: start..end,
                        by_reference: false,
                        original: format!("l.{method}(r)"),
                        mutated: vec![format!("l.{other}(r)")],
                    };
                    self.add(range, wrap, &[format!("{method} to {other}")]);
                }
            }
            Expr::Call(call) => {
                let text = self.text[call.func.span().byte_range()].to_owned();
                let other = [
                    ("fmin", "fmax"),
                    ("fmax", "fmin"),
                    ("cmp::min", "cmp::max"),
                    ("cmp::max", "cmp::min"),
                    ("floor", "ceil"),
                    ("ceil", "floor"),
                ]
                .iter()
                .find(|(from, _)| text == *from || text.ends_with(&format!("::{from}")))
                .map(|(from, to)| (from, format!("{}{to}", &text[..text.len() - from.len()])));
                if let Some((from, to)) = other {
                    let what = format!("{from} to {}", to.rsplit("::").next().unwrap_or(&to));
                    self.add(call.func.span().byte_range(), Wrap::Instead(to), &[what]);
                }
            }
            Expr::Repeat(repeat) => return self.visit_expr(&repeat.expr),
            Expr::Const(_) => return,
            Expr::Closure(closure) => return self.visit_expr(&closure.body),
            Expr::Cast(cast) => return self.visit_expr(&cast.expr),
            Expr::Let(node) => return self.visit_expr(&node.expr),
            _ => {}
        }
        visit::visit_expr(self, node);
    }
}
