# SPDX-License-Identifier: Apache-2.0
"""Writes optima.csv: the least costs, level by level, of the problems that DrawnProblems.shared draws, by CP-SAT of OR-Tools.

    pip install ortools==9.15.6755
    python optima.py > optima.csv
"""
import ortools
from ortools.sat.python import cp_model

SLOTS = 48
MASK = (1 << 64) - 1


class SplitMix:
    def __init__(self, seed):
        self.state = seed

    def below(self, bound):
        self.state = (self.state + 0x9E3779B97F4A7C15) & MASK
        z = self.state
        z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
        z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
        z ^= z >> 31
        return (z >> 1) % bound

    def within(self, least, most):
        return least + self.below(most - least + 1)


def draw_route(random, levels, gears, due, fallback):
    if fallback:
        return [random.within(30, 60)] + [random.below(1000) for _ in range(1, levels)], []
    costs = [random.below(20) if random.below(3) == 0 else 0]
    costs += [random.below(1000) for _ in range(1, levels)]
    lasts = random.within(2, 12)
    end = due - random.below(4)
    first = max(0, end - lasts)
    loads = [(0, first, first + 1, 1)]
    gear = random.within(2, gears - 1)
    loads.append((gear, first, end, 2 if random.below(5) == 0 else 1))
    if random.below(2) == 0:
        loads.append((1, first, SLOTS, random.within(1, 3)))
    return costs, loads


def draw(seed):
    random = SplitMix(seed)
    items = random.within(12, 30)
    gears = random.within(4, 5)
    tight = seed % 2 == 1
    levels = random.within(2, 3)
    capacity = []
    for g in range(gears):
        places = 1 + random.below(items // 8 + 1) if tight else items // 4 + random.below(3)
        low = random.below(SLOTS)
        if g == 0:
            capacity.append([2 if tight else 4] * SLOTS)
        elif g == 1:
            capacity.append([items // 2 + places * s // 6 for s in range(SLOTS)])
        else:
            capacity.append([max(0, places - 1) if low <= s < low + 6 else places for s in range(SLOTS)])
    drawn = []
    for _ in range(items):
        due = random.within(14, SLOTS)
        ways = random.within(4, 6)
        always = not tight or random.below(8) > 0
        drawn.append([draw_route(random, levels, gears, due, always and r == ways - 1) for r in range(ways)])
    return levels, capacity, drawn


def optima(seed):
    levels, capacity, items = draw(seed)
    model = cp_model.CpModel()
    takes = [[model.new_bool_var("") for _ in routes] for routes in items]
    for of_item in takes:
        model.add_exactly_one(of_item)
    for g, of_gear in enumerate(capacity):
        for slot in range(SLOTS):
            terms = []
            for routes, of_item in zip(items, takes):
                for (_, loads), take in zip(routes, of_item):
                    terms += [p * take for gear, first, end, p in loads if gear == g and first <= slot < end]
            if terms:
                model.add(sum(terms) <= of_gear[slot])
    costs = []
    for level in range(levels):
        cost = sum(
            route[0][level] * take for routes, of_item in zip(items, takes) for route, take in zip(routes, of_item))
        model.minimize(cost)
        solver = cp_model.CpSolver()
        solver.parameters.num_workers = 1
        solver.parameters.random_seed = 1
        status = solver.solve(model)
        if status == cp_model.INFEASIBLE and level == 0:
            return "infeasible"
        assert status == cp_model.OPTIMAL, (seed, level, solver.status_name(status))
        costs.append(round(solver.objective_value))
        model.add(cost == costs[-1])
    return " ".join(map(str, costs))


if __name__ == "__main__":
    print(f"# Least costs by level of DrawnProblems.shared(seed), by OR-Tools {ortools.__version__}, CP-SAT, each level proven optimal,")
    print("# the levels before it held at their optimum; written by optima.py beside this file.")
    print("seed,costs")
    for seed in range(200):
        print(f"{seed},{optima(seed)}", flush=True)
