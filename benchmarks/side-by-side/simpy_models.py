"""The tandem and the single server in SimPy 3, fed the numbers that the other programs are fed; and the season of rounds.

Run by side_by_side.py; prints model,program,seconds,result.
"""

import importlib.util
import json
import os
import sys
import time
from datetime import date

import simpy

ROUNDS_FOLDER = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "tests", "Published", "other-engines")
CAPACITIES = (8, 60, 30, 40)
ENTITIES = 150


def tandem(units, days):
    total = 0.0
    for offset in range(0, len(units), ENTITIES):
        env = simpy.Environment()
        stages = [simpy.Container(env, capacity=capacity, init=capacity) for capacity in CAPACITIES]
        left = [0.0] * ENTITIES

        def entity(number, row):
            yield env.timeout(0.8 * number)
            held = 0
            for stage, capacity in enumerate(CAPACITIES):
                wanted = min(units[row], capacity)
                yield stages[stage].get(wanted)
                if stage > 0:
                    stages[stage - 1].put(held)
                held = wanted
                yield env.timeout(days[row][stage])
            stages[-1].put(held)
            left[number] = env.now

        for number in range(ENTITIES):
            env.process(entity(number, offset + number))
        env.run()
        total += sum(left[number] - 0.8 * number for number in range(ENTITIES))
    return total


def single_server(gaps, services):
    env = simpy.Environment()
    server = simpy.Resource(env, capacity=1)
    total = [0.0]

    def visit(service):
        came = env.now
        with server.request() as asked:
            yield asked
            yield env.timeout(service)
        total[0] += env.now - came

    def door():
        for gap, service in zip(gaps, services):
            yield env.timeout(gap)
            env.process(visit(service))

    env.process(door())
    env.run()
    return total[0]


def load_rounds():
    spec = importlib.util.spec_from_file_location("rounds", os.path.join(ROUNDS_FOLDER, "rounds.py"))
    rounds = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(rounds)
    return rounds


def spring_batches(rounds, plan):
    """The trays of the spring example by their planned dates, with no luck, no weather, no flats: less than BenchSim plays."""
    opens = date.fromisoformat(plan["opens"])
    opens = opens.toordinal() - opens.weekday()

    def day(text):
        return date.fromisoformat(text).toordinal() - opens

    batches = []
    for row in plan["batches"]:
        sow, table, out = day(row["sow"]), day(row["table"]), day(row["set_out"])
        off = day(row["off_mat"]) if row["off_mat"] else sow
        benches = ["main-bench", "overflow-bench"]
        batches.append(rounds.Batch(row["id"], row["trays"], sow, out, row["off_mat"] is not None, 15 * (off - sow), table - off, out - table, benches))
    places = {("mat" if space["kind"] == "mat" else space["id"]): space["places"] for space in plan["spaces"]}
    return batches, places


def best(model, play, times):
    shortest, answer = 1e9, None
    for _ in range(times):
        start = time.perf_counter()
        answer = play()
        shortest = min(shortest, time.perf_counter() - start)
    print(f"{model},SimPy 3,{shortest!r},{answer!r}", flush=True)


def main():
    folder = sys.argv[1]
    with open(os.path.join(folder, "tandem.txt"), encoding="ascii") as file:
        rows = [line.split() for line in file]
    units = [int(row[0]) for row in rows]
    days = [[float(text) for text in row[1:]] for row in rows]
    best("tandem", lambda: tandem(units, days), 30)

    with open(os.path.join(folder, "single-server.txt"), encoding="ascii") as file:
        pairs = [tuple(map(float, line.split())) for line in file]
    gaps, services = [pair[0] for pair in pairs], [pair[1] for pair in pairs]
    best("M/M/1", lambda: single_server(gaps, services), 30)

    rounds = load_rounds()

    def went_out(trays):
        return sum(1 for tray in trays if tray.space == "field")

    batches = rounds.read()
    rules = dict(days_off=rounds.DAYS_OFF, sow_wait=3, give_up=10, table_lead=2)
    best("rounds", lambda: went_out(rounds.play(batches, rounds.PLACES, **rules)), 100)

    with open(os.path.join(folder, "spring.json"), encoding="utf-8") as file:
        spring, places = spring_batches(rounds, json.load(file))
    best("spring", lambda: went_out(rounds.play(spring, places)), 100)


if __name__ == "__main__":
    main()
