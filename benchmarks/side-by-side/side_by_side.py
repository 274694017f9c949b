"""Times the same models in BenchSim, in a hand-written loop in C#, in a loop in C++ and in SimPy 3, in one run, and prints a table.

    apt-get install g++ python3-simpy3
    dotnet build BenchSim.sln -c Release
    /usr/bin/python3 benchmarks/side-by-side/side_by_side.py

The shortest of many calls counts (40 in C#, 80 in C++, 30 or 100 in SimPy), warm, since anything else on the machine only ever makes a call longer. The answers
must agree before the times are worth comparing: to a billionth for the tandem and the single server, to the tray for the rounds.
"""

import os
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
ENGINE, STEPS, SWEPT, SEASON = "BenchSim.Engine", "BenchSim.Engine in steps", "BenchSim.Engine swept", "BenchSim.Season"
LOOP, CPP, SIMPY = "hand-written loop in C#", "loop in C++", "SimPy 3"


def run(*command):
    return subprocess.run(command, check=True, stdout=subprocess.PIPE, text=True, cwd=ROOT).stdout


def measure():
    with tempfile.TemporaryDirectory() as folder:
        program = os.path.join(folder, "loop")
        run("g++", "-O2", "-std=c++17", "-o", program, os.path.join(HERE, "loop.cpp"))
        with open(os.path.join(folder, "spring.json"), "w", encoding="utf-8") as file:
            file.write(run("dotnet", "run", "--project", "src/BenchSim.Cli", "-c", "Release", "--no-build", "--", "check", "scenarios/two-house-spring", "--json"))
        lines = "".join(
            run("dotnet", "run", "--project", "benchmarks/BenchSim.Benchmarks", "-c", "Release", "--no-build", "--", "side-by-side", model, folder)
            for model in ("tandem", "single-server", "rounds", "spring")
        )
        lines += run(program, folder)
        lines += run(sys.executable, "-B", os.path.join(HERE, "simpy_models.py"), folder)
    found = {}
    for line in lines.splitlines():
        model, name, seconds, answer, *rest = line.split(",")
        found[model, name] = (float(seconds), float(answer), *map(int, rest))
    return found


def agree(found):
    for model in ("tandem", "M/M/1", "rounds"):
        answers = [row[1] for (of, _), row in found.items() if of == model]
        if max(answers) - min(answers) > 1e-9 * abs(answers[0]):
            sys.exit(f"The programs disagree on {model}: {answers}")


def main():
    found = measure()
    agree(found)
    print(f"{'model':<8} {'program':<26} {'ms a call':>10} {'against BenchSim':>17} {'bytes an event':>15}")
    for model, ours in (("tandem", ENGINE), ("M/M/1", ENGINE), ("rounds", SEASON), ("spring", SEASON)):
        for name in (ours, STEPS, SWEPT, LOOP, CPP, SIMPY):
            if (model, name) not in found:
                continue
            seconds, _, *rest = found[model, name]
            each = f"{rest[1] / rest[0]:.3f}" if rest and rest[0] else ""
            print(f"{model:<8} {name:<26} {1000 * seconds:>10.3f} {seconds / found[model, ours][0]:>17.3f} {each:>15}")
    for model, ours in (("tandem", ENGINE), ("M/M/1", ENGINE), ("M/M/1", STEPS), ("M/M/1", SWEPT)):
        print(f"{ours} takes {found[model, ours][0] / found[model, LOOP][0]:.2f} times as long as the hand-written loop on {model}.")
    for model in ("rounds", "spring"):
        print(f"BenchSim.Season is {found[model, SIMPY][0] / found[model, SEASON][0]:.0f} times as fast as SimPy on {model}.")


if __name__ == "__main__":
    main()
