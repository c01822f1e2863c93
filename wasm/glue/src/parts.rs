//! Cuts a module in two: what plans need, and the rest, which is loaded after it into the same memory.
//!
//! The core answers each calculation by a function of its own that is called through the function table
//! (`request::written`, and the closures of `table::plain`). Those of the second part, and all that only they reach, move
//! there with their places in the table; the first part has these places empty until the second is loaded.

use std::collections::{HashMap, HashSet};

use walrus::passes::gc;
use walrus::{
    ConstExpr, ElementItems, ElementKind, ExportItem, FunctionId, FunctionKind, GlobalKind,
    ImportedFunction, Module, TableId, ir,
};

type Result<T> = std::result::Result<T, Box<dyn std::error::Error>>;

/// The name under which the second part imports from the first.
const FIRST: &str = "first";

/// The two parts of the module in `wasm`: the first has the calculations with the names `first`.
pub fn split(wasm: &[u8], first: &[String]) -> Result<[Vec<u8>; 2]> {
    let mut one = Module::from_buffer(wasm)?;
    let mut two = Module::from_buffer(wasm)?;
    let moved = moved(&one, first)?;

    keep_elements(&mut one, |id| !moved.contains(&id.index()))?;
    gc::run(&mut one);
    let stays: HashSet<usize> = one.funcs.iter().map(|function| function.id().index()).collect();

    keep_elements(&mut two, |id| moved.contains(&id.index()))?;
    import_from_first(&mut two, &stays);
    gc::run(&mut two);

    let items: HashMap<String, ExportItem> = items(&one).collect();
    for import in two.imports.iter().filter(|import| import.module == FIRST) {
        let item = items.get(&import.name).ok_or("the second part needs what the first lacks")?;
        one.exports.add(&import.name, *item);
    }
    Ok([one.emit_wasm(), two.emit_wasm()])
}

/// What `one` can export, by the names under which the second part imports it: both parts are read from one module, in which
/// all has its number.
fn items(one: &Module) -> impl Iterator<Item = (String, ExportItem)> {
    let memories = one.memories.iter().map(|memory| ExportItem::Memory(memory.id()));
    let tables = one.tables.iter().map(|table| ExportItem::Table(table.id()));
    let globals = one.globals.iter().map(|global| ExportItem::Global(global.id()));
    let functions = one.funcs.iter().map(|function| ExportItem::Function(function.id()));
    memories.chain(tables).chain(globals).chain(functions).map(|item| (name_of(item), item))
}

fn name_of(item: ExportItem) -> String {
    match item {
        ExportItem::Memory(id) => format!("m{}", id.index()),
        ExportItem::Table(id) => format!("t{}", id.index()),
        ExportItem::Global(id) => format!("g{}", id.index()),
        ExportItem::Tag(id) => format!("e{}", id.index()),
        ExportItem::Function(id) => format!("{:x}", id.index()),
    }
}

/// The functions of the table that begin the calculations of the second part.
fn moved(module: &Module, first: &[String]) -> Result<HashSet<usize>> {
    // The end of the function's name: `::GoOnRequest>` for the calculation `go-on`.
    let request = |name: &String| {
        let words = name.split('-').map(|word| word[..1].to_uppercase() + &word[1..]);
        format!("::{}Request>", words.collect::<String>())
    };
    let mut unseen: Vec<String> = first.iter().map(request).collect();
    let mut moved = HashSet::new();
    for id in in_tables(module) {
        let name = module.funcs.get(id).name.as_deref().unwrap_or_default();
        let of_request = name.contains("::request::written::<");
        let of_numbers = name.contains("::table::plain::") && name.contains("FnOnce");
        let begins = unseen.iter().position(|request| of_request && name.ends_with(request));
        if let Some(place) = begins {
            unseen.remove(place);
        } else if of_request || of_numbers {
            moved.insert(id.index());
        }
    }
    if !unseen.is_empty() || moved.is_empty() {
        return Err(format!("no functions of these calculations in the table: {unseen:?}").into());
    }
    Ok(moved)
}

fn in_tables(module: &Module) -> impl Iterator<Item = FunctionId> {
    let items = module.elements.iter().flat_map(|element| match &element.items {
        ElementItems::Functions(functions) => functions.clone(),
        ElementItems::Expressions(..) => Vec::new(),
    });
    items.collect::<Vec<_>>().into_iter()
}

/// Leaves in the tables only the functions that are to be kept, each in its place.
fn keep_elements(module: &mut Module, kept: impl Fn(FunctionId) -> bool) -> Result<()> {
    let mut runs: Vec<(TableId, i32, Vec<FunctionId>)> = Vec::new();
    let mut cut = Vec::new();
    for element in module.elements.iter() {
        let ElementItems::Functions(functions) = &element.items else { continue };
        let ElementKind::Active { table, offset: ConstExpr::Value(ir::Value::I32(offset)) } =
            element.kind
        else {
            return Err("a table is filled at a place that is not a number".into());
        };
        cut.push(element.id());
        for (place, id) in (offset..).zip(functions).filter(|(_, id)| kept(**id)) {
            match runs.last_mut() {
                Some((of, from, run)) if *of == table && *from + run.len() as i32 == place => {
                    run.push(*id);
                }
                _ => runs.push((table, place, vec![*id])),
            }
        }
    }
    for id in cut {
        module.elements.delete(id);
        for table in module.tables.iter_mut() {
            table.elem_segments.remove(&id);
        }
    }
    for (table, place, run) in runs {
        let offset = ConstExpr::Value(ir::Value::I32(place));
        let kind = ElementKind::Active { table, offset };
        let id = module.elements.add(kind, ElementItems::Functions(run));
        module.tables.get_mut(table).elem_segments.insert(id);
    }
    Ok(())
}

/// Makes `two` a module that has nothing of its own but the functions that do not stay in the first.
fn import_from_first(two: &mut Module, stays: &HashSet<usize>) {
    let exports: Vec<_> = two.exports.iter().map(|export| export.id()).collect();
    exports.into_iter().for_each(|id| two.exports.delete(id));
    two.start = None;
    let data: Vec<_> = two.data.iter().map(|data| data.id()).collect();
    data.into_iter().for_each(|id| two.data.delete(id));

    let Module { memories, tables, globals, funcs, imports, .. } = two;
    for memory in memories.iter_mut() {
        let id = memory.id();
        memory.data_segments.clear();
        memory.import = Some(imports.add(FIRST, &name_of(id.into()), id));
    }
    for table in tables.iter_mut() {
        let id = table.id();
        table.import = Some(imports.add(FIRST, &name_of(id.into()), id));
    }
    let ids: Vec<_> = globals.iter().map(|global| global.id()).collect();
    for id in ids {
        globals.get_mut(id).kind = GlobalKind::Import(imports.add(FIRST, &name_of(id.into()), id));
    }
    for function in funcs.iter_mut().filter(|function| stays.contains(&function.id().index())) {
        if let FunctionKind::Local(local) = &function.kind {
            let (id, ty) = (function.id(), local.ty());
            let import = imports.add(FIRST, &name_of(id.into()), id);
            function.kind = FunctionKind::Import(ImportedFunction { import, ty });
        }
    }
}
