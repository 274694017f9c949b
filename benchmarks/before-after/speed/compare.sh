#!/usr/bin/env bash
# Times the spring example in the tree of a tag and in this one, turn by turn in one run: benchmarks/before-after/speed/compare.sh [TAG [TURNS]]
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(git -C "$here" rev-parse --show-toplevel)
tag=${1:-before-one-house} turns=${2:-3}
scratch=$(mktemp -d)
trap 'git -C "$root" worktree remove --force "$scratch/tree" 2> /dev/null; rm -rf "$scratch" "$here/obj" "$here/bin"' EXIT
git -C "$root" worktree add --detach "$scratch/tree" "$tag" > /dev/null
for side in "$scratch/tree:before" "$root:now"; do
    tree=${side%:*} name=${side#*:}
    dotnet build "$tree/src/BenchSim.Cli" -c Release -p:RunAnalyzers=false > "$scratch/$name.log"
    rm -rf "$here/obj" "$here/bin"
    dotnet build "$here" -c Release -p:Tree="$tree" -p:Side="$name" -o "$scratch/$name" > "$scratch/$name.log"
done
echo "processor: $(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -1), $(nproc) threads"
for ((turn = 1; turn <= turns; turn++)); do
    for name in before now; do
        echo "$name, turn $turn of $turns"
        # Each plays its own example, for a later tree may know keys that an earlier one refuses.
        tree=$root
        [ "$name" = now ] || tree=$scratch/tree
        dotnet "$scratch/$name/speed.dll" "$tree/scenarios/two-house-spring"
    done
done
