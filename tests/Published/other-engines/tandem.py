"""Four stations in a row with blocking after service, in SimPy 3: the numbers of tandem-numbers.csv.

    /usr/bin/python3 tandem.py > tandem.csv

A unit asks for its places of a station (at most all of them), first come first served, keeps those it has until it has the next, and
stays as long as the file says. Printed: the day on which it gets each station's places and the day on which it leaves, for two sets
of capacities.
"""

import csv
import os
import sys

import simpy

SETS = ((8, 60, 30, 40), (12, 24, 24, 12))


def read():
    with open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "tandem-numbers.csv"), encoding="ascii", newline="") as file:
        return [(float(row["comes"]), int(row["places"]), [float(row[f"stage{stage}"]) for stage in (1, 2, 3, 4)]) for row in csv.DictReader(file)]


def play(capacities, units):
    env = simpy.Environment()
    free = [simpy.Container(env, capacity=capacity, init=capacity) for capacity in capacities]
    days = [[0.0] * 5 for _ in units]

    def unit(index, comes, places, stays):
        yield env.timeout(comes)
        held = 0
        for stage, stay in enumerate(stays):
            wanted = min(places, capacities[stage])
            yield free[stage].get(wanted)
            if stage > 0:
                yield free[stage - 1].put(held)
            held = wanted
            days[index][stage] = env.now
            yield env.timeout(stay)
        yield free[3].put(held)
        days[index][4] = env.now

    for index, (comes, places, stays) in enumerate(units):
        env.process(unit(index, comes, places, stays))
    env.run()
    return days


def main():
    units = read()
    out = sys.stdout
    out.write("capacities,unit,stage1,stage2,stage3,stage4,leaves\n")
    for capacities in SETS:
        for index, row in enumerate(play(capacities, units)):
            out.write("|".join(map(str, capacities)) + f",{index}," + ",".join(f"{day:.10f}" for day in row) + "\n")


if __name__ == "__main__":
    main()
