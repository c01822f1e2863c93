"""The fewest pots by a general-purpose graph library: maximum bipartite matching on the closure.

Reads one list of recipes a line, each recipe a list of ratios to the base, one a material; writes
one line for each list: the number of chains, the seconds for the relation and the graph, and the
seconds for the matching.
"""

import json
import sys
import time

import networkx as nx


def can_become(a, b):
    """Whether `a` becomes `b` by adding only."""
    return all(x <= y for x, y in zip(a, b))


def fewest_chains(recipes):
    start = time.perf_counter()
    graph = nx.Graph()
    firsts = [("first", i) for i in range(len(recipes))]
    graph.add_nodes_from(firsts, bipartite=0)
    graph.add_nodes_from((("then", i) for i in range(len(recipes))), bipartite=1)
    for i, a in enumerate(recipes):
        for j, b in enumerate(recipes):
            if i != j and can_become(a, b):
                graph.add_edge(("first", i), ("then", j))
    related = time.perf_counter()
    matching = nx.bipartite.hopcroft_karp_matching(graph, firsts)
    matched = time.perf_counter()
    chains = len(recipes) - len(matching) // 2
    return chains, related - start, matched - related


for line in sys.stdin:
    print(*fewest_chains(json.loads(line)), flush=True)
