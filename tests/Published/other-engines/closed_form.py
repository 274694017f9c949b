"""Queues with a known answer, in SimPy 3: the same figures that BenchSim's engine is held against.

    /usr/bin/python3 closed_form.py > closed-form.csv

Each row is the mean of 40 replications with its half interval (Student, 39 degrees of freedom, two-sided chance of error 1/3000 a row,
so at most one in a thousand for the three rows).
"""

import math
import random
import statistics
import sys

import simpy

STUDENT = 3.9340  # Student's t, 39 degrees of freedom, upper tail 1/6000
REPLICATIONS = 40


def single_server(luck, load, customers=4000, warm_up=500):
    """M/M/1, service rate 1: mean wait before service."""
    env = simpy.Environment()
    server = simpy.Resource(env, capacity=1)
    waits = []

    def visit(number):
        came = env.now
        with server.request() as asked:
            yield asked
            if number >= warm_up:
                waits.append(env.now - came)
            yield env.timeout(luck.expovariate(1.0))

    def door():
        for number in range(customers):
            yield env.timeout(luck.expovariate(load))
            env.process(visit(number))

    env.process(door())
    env.run()
    return statistics.fmean(waits)


def line(luck, stations, slots, length=1500.0, warm_up=200.0):
    """Stations in a row, no room between, always someone before the first, blocking after service: units a day."""
    env = simpy.Environment()
    places = [simpy.Resource(env, capacity=slots) for _ in range(stations)]
    done = [0]

    def unit():
        held = None
        for at, place in enumerate(places):
            asked = place.request()
            yield asked
            if held is not None:
                places[at - 1].release(held)
                if at == 1:
                    env.process(unit())
            held = asked
            yield env.timeout(luck.expovariate(1.0))
        places[-1].release(held)
        if env.now > warm_up:
            done[0] += 1

    for _ in range(slots):
        env.process(unit())
    env.run(until=warm_up + length)
    return done[0] / length


def row(out, name, exact, play):
    values = [play(random.Random(f"{name} {replication}")) for replication in range(REPLICATIONS)]
    half = STUDENT * statistics.stdev(values) / math.sqrt(len(values))
    out.write(f"{name},{exact:.10f},{statistics.fmean(values):.6f},{half:.6f}\n")


def main():
    out = sys.stdout
    out.write("what,exact,mean,half_interval\n")
    row(out, "single server at load 0.5: wait", 0.5 / (1 - 0.5), lambda luck: single_server(luck, 0.5))
    row(out, "two stations of one slot: units a day", 2 / 3, lambda luck: line(luck, 2, 1))
    row(out, "three stations of one slot: units a day", 22 / 39, lambda luck: line(luck, 3, 1))


if __name__ == "__main__":
    main()
