"""A cut-down tray model without a clock, in SimPy 3: the numbers of any-time-numbers.csv, times in hours.

    /usr/bin/python3 any_time.py > any-time.csv

Single trays come, stand on a mat, then on a bench, then on a table, and go out. Places are few. A tray that is ready keeps its place until
it has the next one; of those that wait for a place the one with the lowest number goes first.
"""

import csv
import os
import sys

import simpy

PLACES = (("mat", 5), ("bench", 10), ("table", 3))


def read():
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "any-time-numbers.csv"), encoding="ascii", newline="") as file:
        return [(float(row["comes"]), [float(row[name]) for name, _ in PLACES]) for row in csv.DictReader(file)]


def play(trays):
    env = simpy.Environment()
    spaces = [simpy.PriorityResource(env, capacity=places) for _, places in PLACES]
    hours = [[0.0] * 4 for _ in trays]

    def tray(index, comes, stays):
        yield env.timeout(comes)
        held = None
        for at, stay in enumerate(stays):
            asked = spaces[at].request(priority=index)
            yield asked
            if held is not None:
                spaces[at - 1].release(held)
            held = asked
            hours[index][at] = env.now
            yield env.timeout(stay)
        spaces[-1].release(held)
        hours[index][3] = env.now

    for index, (comes, stays) in enumerate(trays):
        env.process(tray(index, comes, stays))
    env.run()
    return hours


def main():
    out = sys.stdout
    out.write("tray,sown,bench,table,out\n")
    for index, row in enumerate(play(read())):
        out.write(f"{index}," + ",".join(f"{hour:.10f}" for hour in row) + "\n")


if __name__ == "__main__":
    main()
