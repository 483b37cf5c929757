"""The same network by the same method written with scipy: what an engineer with numpy and a sparse LU would do.

Reads a problem as JSON, solves it cold a few times, prints {"ms", "steps", "head"}. Flows are the unknowns' companions
(global gradient method); heads come from a sparse LU of the nodal equations in symmetric mode, patterns reused where
scipy allows.
"""
import json
import sys
import time

import numpy as np
import scipy.sparse as sp
from scipy.sparse.linalg import splu

G = 9.80665
problem = json.load(open(sys.argv[1]))
start_node = np.array(problem["from"])
end_node = np.array(problem["to"])
length, bore = np.array(problem["length"]), np.array(problem["bore"])
c, roughness, nu = np.array(problem["c"]), np.array(problem["roughness"]), problem["viscosity"]
points, source, source_head = problem["points"], problem["source"], problem["head"]
drinker = np.array(problem["drinker"], dtype=int)
opens_at, k = np.array(problem["start"]), np.array(problem["k"])
pipes = len(length)


def hazen_williams(q):
    r = 10.67 * length / (c**1.852 * bore**4.8704)
    size = np.abs(q)
    p = r * size**0.852
    return p * q, np.maximum(1.852 * p, 1.852 * r * 1e-10**0.852)


def darcy_weisbach(q):
    size = np.abs(q)
    reynolds = np.maximum(4 * size / (np.pi * bore * nu), 1e-12)
    laminar = 128 * nu * length / (np.pi * G * bore**4)
    power = (7 / np.maximum(reynolds, 500)) ** 0.9
    inside = power + 0.27 * roughness / bore
    log = -np.log(inside)
    a = (2.457 * log) ** 16
    b = (37530 / np.maximum(reynolds, 500)) ** 16
    l12 = (8 / np.maximum(reynolds, 500)) ** 12
    turbulent = (a + b) ** -1.5
    f = 8 * (l12 + turbulent) ** (1 / 12)
    growth = (-l12 - 0.125 * turbulent * 16 * (0.9 * a * power / (inside * log) - b) / (a + b)) / (l12 + turbulent)
    coefficient = 8 * length / (np.pi**2 * G * bore**5)
    loss = np.where(reynolds < 500, laminar * q, coefficient * f * q * size)
    slope = np.where(reynolds < 500, laminar, coefficient * f * size * (2 + growth))
    return loss, np.maximum(slope, 1e-4)


friction = {"hazenWilliams": hazen_williams, "darcyWeisbach": darcy_weisbach}[problem["friction"]]
unknown = np.delete(np.arange(points), source)
rows = np.concatenate([np.arange(pipes), np.arange(pipes)])
incidence = sp.csr_matrix(
    (np.concatenate([np.ones(pipes), -np.ones(pipes)]), (rows, np.concatenate([start_node, end_node]))),
    shape=(pipes, points),
)
reduced = incidence[:, unknown].tocsr()
reduced_t = reduced.T.tocsr()
place = np.full(points, -1)
place[unknown] = np.arange(points - 1)


def solve():
    head = np.full(points, float(source_head))
    q_drinker = k * np.sqrt(np.maximum(0, source_head - opens_at))
    # Flows in balance to begin with, by one linear solve with equal pipes.
    draw = np.zeros(points)
    np.add.at(draw, drinker, q_drinker)
    laplacian = (reduced_t @ reduced).tocsc()
    potential = np.zeros(points)
    potential[unknown] = splu(laplacian, permc_spec="MMD_AT_PLUS_A", options={"SymmetricMode": True}).solve(-draw[unknown])
    q = incidence @ potential
    for step in range(1, 200):
        loss, slope = friction(q)
        need = (q_drinker / k) ** 2
        gap = head[drinker] - opens_at - need
        g = np.where(q_drinker > 0, k * k / (2 * np.maximum(q_drinker, 1e-30)), 0)
        d = 1 / slope
        diagonal = np.zeros(points)
        np.add.at(diagonal, drinker, g)
        matrix = (reduced_t @ sp.diags(d) @ reduced + sp.diags(diagonal[unknown])).tocsc()
        drop = incidence @ head
        right = -(reduced_t @ (d * (drop - loss)))
        extra = np.zeros(points)
        np.add.at(extra, drinker, g * gap)
        right -= extra[unknown]
        change = splu(matrix, permc_spec="MMD_AT_PLUS_A", options={"SymmetricMode": True}).solve(right)
        head[unknown] += change
        q = q + d * (incidence @ head - loss)
        q_drinker = np.maximum(0, q_drinker + g * (head[drinker] - opens_at - need))
        new_loss, _ = friction(q)
        left = np.max(np.abs(incidence @ head - new_loss))
        left = max(left, np.max(np.abs(head[drinker] - opens_at - (q_drinker / k) ** 2)))
        if left < 1e-9:
            break
    return head, step


times = []
begin = time.perf_counter()
while len(times) < 3 or (time.perf_counter() - begin < 1 and len(times) < 50):
    t = time.process_time()
    head, steps = solve()
    times.append(time.process_time() - t)
print(json.dumps({"ms": 1000 * float(np.median(times)), "steps": steps, "head": head.tolist()}))
