"""
Whole networks by another method than the library's: Newton on the heads of the points, each pipe as the flow that a
head makes in it. The laws are written anew from the published formulas; slopes come from complex steps, the linear
systems from scipy.sparse. At the end every Darcy-Weisbach loss is compared with the fluids library.
"""

import json
import sys

import numpy as np
from fluids.core import K_from_f, head_from_K
from fluids.fittings import Hooper, Hooper2K
from fluids.friction import Churchill_1977
from scipy.constants import g
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components
from scipy.sparse.linalg import spsolve

ONE_WAY, REGULATOR = 1, 2


class Laws:
    """Loss of each pipe at a flow, and the flow at a loss."""

    def __init__(self, pipes, friction, viscosity):
        self.length, self.bore, self.coefficient, self.roughness, self.k1, self.k_infinity = (
            np.array([pipe[name] for pipe in pipes], dtype=float)
            for name in ("length", "bore", "hazenWilliams", "roughness", "k1", "kInfinity")
        )
        self.friction, self.viscosity = friction, viscosity
        self.area = np.pi / 4 * self.bore**2

    def loss(self, flow):
        """For flow > 0; complex flows give slopes."""
        velocity = flow / self.area
        reynolds = velocity * self.bore / self.viscosity
        velocity_head = velocity**2 / (2 * g)
        fittings = (self.k1 / reynolds + self.k_infinity) * velocity_head
        if self.friction == "hazenWilliams":
            return 10.67 * self.length * flow**1.852 / (self.coefficient**1.852 * self.bore**4.8704) + fittings
        return self.churchill(reynolds) * self.length / self.bore * velocity_head + fittings

    def churchill(self, reynolds):
        # Far below the transition the other terms are beneath the last bit, and their powers overflow.
        re = np.where(reynolds.real < 100, 100, reynolds)
        a = (2.457 * np.log(1 / ((7 / re) ** 0.9 + 0.27 * self.roughness / self.bore))) ** 16
        b = (37530 / re) ** 16
        factor = 8 * ((8 / re) ** 12 + (a + b) ** -1.5) ** (1 / 12)
        return np.where(reynolds.real < 100, 64 / reynolds, factor)

    def slope(self, flow):
        step = 1e-30 * np.maximum(flow, 1e-30)
        return self.loss(flow + 1j * step).imag / step

    def first_guess(self, wanted):
        """The least of the flows that each part of the loss would let through alone; from above Newton goes straight."""
        by_hazen_williams = self.friction == "hazenWilliams"
        laminar, rough = (0, 0) if by_hazen_williams else (64, 0.02)
        per_flow = (laminar * self.length / self.bore + self.k1) * self.viscosity / (2 * g * self.bore * self.area)
        per_square = (rough * self.length / self.bore + self.k_infinity) / (2 * g * self.area**2)
        guess = np.minimum(wanted / per_flow, np.sqrt(wanted / per_square))
        if by_hazen_williams:
            per_power = 10.67 * self.length / (self.coefficient**1.852 * self.bore**4.8704)
            guess = np.minimum(guess, (wanted / per_power) ** (1 / 1.852))
        return np.clip(np.nan_to_num(guess, nan=0.0), 1e-30, 1e3)

    def flow_at(self, head):
        """Flow and its slope for a head of either sign: Newton kept inside a bracket that only ever shrinks."""
        wanted = np.abs(head)
        low, high = np.zeros_like(wanted), np.full_like(wanted, np.inf)
        flow = self.first_guess(wanted)
        for _ in range(200):
            left = self.loss(flow) - wanted
            high = np.where(left > 0, flow, high)
            low = np.where(left <= 0, flow, low)
            step = flow - left / self.slope(flow)
            inside = (step >= low) & (step <= high)
            following = np.where(inside, step, np.where(np.isinf(high), 4 * flow, (low + high) / 2))
            # Newton doubles its digits: after a step this small the next would be lost in the last bit.
            settled = np.all(np.abs(following - flow) <= 1e-12 * flow + 1e-24)
            flow = following
            if settled:
                break
        return np.sign(head) * flow, 1 / self.slope(np.maximum(flow, 1e-11))


def with_fitting(pipe):
    """A pipe whose fitting is told by name: the coefficients are those the fluids library has of it."""
    name = pipe.get("fitting")
    if name is None:
        return pipe
    inches = pipe["bore"] / 0.0254
    k1, k_large = Hooper[name]
    fitted = {**pipe, "k1": k1, "kInfinity": k_large * (1 + 1 / inches)}
    theirs = Hooper2K(inches, 1000.0, name=name)
    if abs(k1 / 1000.0 + fitted["kInfinity"] - theirs) > 1e-12 * theirs:
        raise RuntimeError(f"{name}: by fluids K is {theirs} at Re 1000")
    return fitted


class Network:
    def __init__(self, line):
        self.heights = np.array(line["heights"])
        self.count = len(self.heights)
        self.pipes = [with_fitting(pipe) for pipe in line["pipes"]]
        self.open = [i for i, pipe in enumerate(self.pipes) if not pipe["shut"]]
        self.sources = dict(zip(line["sources"], line["sourceHead"]))
        self.drinkers = line["drinkers"]
        self.working = [d for d, drinker in enumerate(self.drinkers) if drinker["atWork"]]
        self.friction, self.viscosity = line["friction"], line["viscosity"]
        self.regulators = [i for i in self.open if self.pipes[i].get("kind") == REGULATOR]

    def setting(self, i):
        return self.heights[self.pipes[i]["to"]] + self.pipes[i]["setting"]

    def own_loss(self, i, flow):
        """What a regulator takes when it stands wide open [m]."""
        law = Laws([self.pipes[i]], self.friction, self.viscosity)
        return law.loss(np.array([flow]))[0] if flow > 0 else 0.0

    def solve(self):
        """Finds which regulators hold: all are taken to hold at first, those without head to spare let go."""
        holding = set(self.regulators)
        for _ in range(2 * len(self.regulators) + 2):
            state = self.solve_holding(holding)
            head = state["head"]
            wanted = {
                i
                for i in self.regulators
                if (
                    head[self.pipes[i]["from"]] - self.own_loss(i, state["flow"][i]) > self.setting(i)
                    if i in holding
                    else head[self.pipes[i]["to"]] > self.setting(i)
                )
            }
            if wanted == holding:
                return state
            holding = wanted
        raise RuntimeError("the regulators do not settle")

    def solve_holding(self, holding):
        """A zone behind a regulator that holds has a fixed head; what it takes is drawn from the point before it."""
        fixed = dict(self.sources)
        fixed.update({self.pipes[i]["to"]: self.setting(i) for i in holding})
        draw = np.zeros(self.count)
        for _ in range(len(holding) + 1):
            state = self.newton(fixed, holding, draw)
            draw = np.zeros(self.count)
            for i in holding:
                outlet = self.pipes[i]["to"]
                state["flow"][i] = -state["left"][outlet]
                draw[self.pipes[i]["from"]] += state["flow"][i]
        return state

    def newton(self, fixed, holding, draw):
        active = [i for i in self.open if i not in holding]
        pipes = [self.pipes[i] for i in active]
        start = np.array([pipe["from"] for pipe in pipes])
        end = np.array([pipe["to"] for pipe in pipes])
        opening = np.array([pipe["setting"] if pipe.get("kind") == ONE_WAY else 0.0 for pipe in pipes])
        one_way = np.array([pipe.get("kind") == ONE_WAY for pipe in pipes])
        laws = Laws(pipes, self.friction, self.viscosity)
        point = np.array([self.drinkers[d]["point"] for d in self.working], dtype=int)
        of_drinkers = lambda name: np.array([self.drinkers[d][name] for d in self.working], dtype=float)
        coefficient, exponent = of_drinkers("coefficient"), of_drinkers("exponent")
        least = of_drinkers("height") + of_drinkers("openingHead")

        graph = coo_matrix((np.ones(len(pipes)), (start, end)), shape=(self.count, self.count))
        _, part = connected_components(graph, directed=False)
        fed = {part[p] for p in fixed}
        reached = np.array([part[p] in fed for p in range(self.count)])
        free = np.array([p for p in range(self.count) if reached[p] and p not in fixed], dtype=int)
        place = np.full(self.count, -1)
        place[free] = np.arange(len(free))
        keeps = reached[point] if len(point) else np.zeros(0, dtype=bool)

        def state_at(head):
            drop = head[start] - head[end] - opening
            flow, slope = laws.flow_at(np.where(one_way, np.maximum(drop, 0), drop))
            dead = (one_way & (drop <= 0)) | ~reached[start]
            flow, slope = np.where(dead, 0, flow), np.where(dead, 0, slope)
            spare = np.where(keeps, np.maximum(head[point] - least, 0), 0)
            drunk = coefficient * spare**exponent
            left = -draw.copy()
            np.add.at(left, start, -flow)
            np.add.at(left, end, flow)
            np.add.at(left, point, -drunk)
            answering = np.where(spare > 0, exponent * coefficient * np.maximum(spare, 1e-12) ** (exponent - 1), 0)
            return flow, slope, drunk, answering, left

        head = self.heights.astype(float).copy()
        highest = max(fixed.values())
        span = 1 + highest - self.heights.min()
        head[reached] = highest - 1e-3 * np.arange(1, reached.sum() + 1) / max(1, reached.sum())
        for p, value in fixed.items():
            head[p] = value
        state = state_at(head)
        best, since, kept = np.inf, 0, (head, state)
        for _ in range(80):
            flow, slope, drunk, answering, left = state
            size = np.abs(left[free]).max() if len(free) else 0
            # The last bits of the heads set a floor; once there, further steps only wander.
            since = 0 if size < best / 2 else since + 1
            best, kept = (size, (head, state)) if size < best else (best, kept)
            if size <= 1e-12 * np.abs(flow).max() or (since >= 4 and size <= 1e-10 * np.abs(flow).max() + 1e-10):
                break
            diagonal = np.full(self.count, 1e-15)
            np.add.at(diagonal, start, slope)
            np.add.at(diagonal, end, slope)
            np.add.at(diagonal, point, answering)
            # Behind a shut valve any head will do; a last bit more on the diagonal picks one.
            diagonal *= 1 + 1e-13
            inner = (place[start] >= 0) & (place[end] >= 0)
            rows = np.concatenate([place[start][inner], place[end][inner], np.arange(len(free))])
            columns = np.concatenate([place[end][inner], place[start][inner], np.arange(len(free))])
            values = np.concatenate([-slope[inner], -slope[inner], diagonal[free]])
            step = np.atleast_1d(spsolve(coo_matrix((values, (rows, columns))).tocsc(), left[free]))
            # Left over is the slope of a concave sum of the heads: along the step it falls, and is wanted near nought.
            ahead = left[free] @ step
            # Where all valves are shut nothing answers a head, and the step is without bound; no head leaves this span.
            most = min(1.0, span / max(np.abs(step).max(), 1e-300))
            low, high, share = 0.0, most, most
            for _ in range(30):
                trial = head.copy()
                trial[free] += share * step
                tried = state_at(trial)
                slope_there = tried[4][free] @ step
                if abs(slope_there) <= 0.5 * ahead or (share == most and slope_there >= 0):
                    break
                low, high = (share, high) if slope_there > 0 else (low, share)
                share = (low + high) / 2
            head, state = trial, tried
        size = np.abs(state[4][free]).max() if len(free) else 0
        head, state = (head, state) if size < best else kept
        flow, _, drunk, _, left = state
        self.check(laws, flow, np.abs(left[free]).max() if len(free) else 0)
        all_flow, all_drunk = np.zeros(len(self.pipes)), np.zeros(len(self.drinkers))
        all_flow[active] = flow
        all_drunk[self.working] = drunk
        return {"head": head, "reached": reached, "flow": all_flow, "drinkerFlow": all_drunk, "left": left}

    def check(self, laws, flow, size):
        """Balanced, and the law written here is that of the fluids library."""
        largest = max(np.abs(flow).max(), 1e-12)
        # By Hazen-Williams the last bit of a head drives some 1e-11 m3/s through a short idle pipe, 1e-9 if it is wide.
        if size > 1e-10 * largest + 1e-9:
            raise RuntimeError(f"Newton stopped {size} m3/s short of balance, largest flow {largest}")
        if self.friction != "darcyWeisbach":
            return
        for i in np.flatnonzero(np.abs(flow) > 1e-15):
            velocity = abs(flow[i]) / laws.area[i]
            reynolds = velocity * laws.bore[i] / laws.viscosity
            factor = Churchill_1977(reynolds, laws.roughness[i] / laws.bore[i])
            coefficient = K_from_f(factor, laws.length[i], laws.bore[i]) if laws.length[i] > 0 else 0
            coefficient += laws.k1[i] / reynolds + laws.k_infinity[i]
            theirs = head_from_K(coefficient, velocity)
            ours = laws.loss(np.where(np.arange(len(flow)) == i, abs(flow[i]), 1e-6))[i]
            if abs(theirs - ours) > 1e-9 * theirs:
                raise RuntimeError(f"pipe {i}: {ours} m lost, by fluids {theirs} m")


def answer(line):
    state = Network(line).solve()
    return {
        "head": [float(h) if r else None for h, r in zip(state["head"], state["reached"])],
        "flow": [float(q) for q in state["flow"]],
        "drinkerFlow": [float(q) for q in state["drinkerFlow"]],
    }


np.seterr(all="ignore")
question = json.load(sys.stdin)
print(json.dumps({name: answer(line) for name, line in question.items()}))
