//! Chains and antichains by trying everything. `before[a][b]` says that a comes before b.

/// The pairs and all that follow from them.
pub fn closure(nodes: usize, pairs: &[(usize, usize)]) -> Vec<Vec<bool>> {
    let mut before = vec![vec![false; nodes]; nodes];
    pairs.iter().for_each(|&(a, b)| before[a][b] = true);
    for via in 0..nodes {
        for a in 0..nodes {
            for b in 0..nodes {
                before[a][b] |= before[a][via] && before[via][b];
            }
        }
    }
    before
}

/// The smallest number of parts over all partitions of `0..items` of which `allowed` holds.
pub fn fewest_parts(items: usize, allowed: &dyn Fn(&[Vec<usize>]) -> bool) -> Option<usize> {
    fn go(
        next: usize,
        items: usize,
        parts: &mut Vec<Vec<usize>>,
        allowed: &dyn Fn(&[Vec<usize>]) -> bool,
        best: &mut Option<usize>,
    ) {
        if next == items {
            if best.is_none_or(|b| parts.len() < b) && allowed(parts) {
                *best = Some(parts.len());
            }
            return;
        }
        for part in 0..parts.len() {
            parts[part].push(next);
            go(next + 1, items, parts, allowed, best);
            parts[part].pop();
        }
        parts.push(vec![next]);
        go(next + 1, items, parts, allowed, best);
        parts.pop();
    }
    let mut best = None;
    go(0, items, &mut Vec::new(), allowed, &mut best);
    best
}

/// The fewest chains that cover all nodes.
pub fn fewest_chains(before: &[Vec<bool>]) -> usize {
    let chain = |part: &Vec<usize>| {
        part.iter().all(|&a| part.iter().all(|&b| a == b || before[a][b] || before[b][a]))
    };
    fewest_parts(before.len(), &|parts| parts.iter().all(chain)).expect("single nodes are chains")
}

/// The size of the largest antichain.
pub fn largest_antichain(before: &[Vec<bool>]) -> usize {
    let nodes = before.len();
    let apart = |set: u32| {
        (0..nodes).all(|a| (0..nodes).all(|b| set >> a & set >> b & 1 == 0 || !before[a][b]))
    };
    (0..1_u32 << nodes)
        .filter(|&set| apart(set))
        .map(|set| set.count_ones() as usize)
        .max()
        .unwrap()
}

/// The fewest paths that cover all nodes when a path steps along `pairs` only and meets each node once:
/// what one gets who forgets the closure.
pub fn fewest_paths(nodes: usize, pairs: &[(usize, usize)]) -> usize {
    fn most_links(pairs: &[(usize, usize)], left: u32, right: u32) -> usize {
        let Some((&(a, b), rest)) = pairs.split_first() else { return 0 };
        let without = most_links(rest, left, right);
        if left >> a & 1 == 1 || right >> b & 1 == 1 {
            return without;
        }
        without.max(1 + most_links(rest, left | 1 << a, right | 1 << b))
    }
    nodes - most_links(pairs, 0, 0)
}
