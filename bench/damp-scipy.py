"""The straight part of a damp floor by a general sparse solver: one matrix, factored once, backward Euler with equal steps.

usage: python3 damp-scipy.py < problem
First line: steps, seconds of a step, nodes. Then a line for each node: storage, conductance outward, pressure outside, pressure at the start.
Then a line for each link: two nodes and a conductance. Prints the cpu seconds and one pressure a line.
"""
import sys
import time

import numpy as np
from scipy.sparse import coo_matrix, diags
from scipy.sparse.linalg import splu


def main():
    steps, seconds, count = sys.stdin.readline().split()
    steps, seconds, count = int(steps), float(seconds), int(count)
    storage, outward, outside, start = np.array([sys.stdin.readline().split() for _ in range(count)], dtype=float).T
    links = np.loadtxt(sys.stdin, ndmin=2)
    began = time.process_time()
    a, b, g = links[:, 0].astype(int), links[:, 1].astype(int), links[:, 2]
    flow = coo_matrix((np.r_[g, g, -g, -g], (np.r_[a, b, a, b], np.r_[a, b, b, a])), shape=(count, count))
    matrix = (diags(storage + seconds * outward) + seconds * flow).tocsc()
    solver = splu(matrix, permc_spec="MMD_AT_PLUS_A", diag_pivot_thresh=0.0, options={"SymmetricMode": True})
    pressure = start
    for _ in range(steps):
        pressure = solver.solve(storage * pressure + seconds * outward * outside)
    print(time.process_time() - began)
    print("\n".join(map(repr, pressure.tolist())))


main()
