#!/usr/bin/env bash
# Prints the licences of all that is inside a build: bash eng/licences.sh DEPS.json, the file benchsim.deps.json of that build.
# Fails where a part has no licence, where the text of one does not lie in eng/licences, and where a package brings native files, or a file
# of somebody else lies in the sources, of which eng/licences/inside.txt does not say what is inside. So a new version of the solver has to
# be looked at before it is passed on.
set -euo pipefail
deps=$(realpath "$1")
cd "$(dirname "${BASH_SOURCE[0]}")/.."
inside=eng/licences/inside.txt
packages=$(dotnet nuget locals global-packages --list | sed 's/^global-packages: //')
used="" code=0 texts=$(mktemp)
declare -A met
trap 'rm -f "$texts"' EXIT

fail() {
    echo "$1" >&2
    code=1
}

tag() { tr -d '\r\n' < "$2" | grep -o "<$1[^>]*>[^<]*" | head -n 1 | sed 's/^<[^>]*>//'; }

part() {
    printf '%s\n    licence: %s\n    %s\n    %s\n' "$1" "$2" "$3" "$4"
    used+=" $(sed 's/ OR .*//' <<< "$2")"
    # Where one may choose, the text of either stands here.
    [[ $2 != *" OR Apache-2.0" ]] || used+=" Apache-2.0"
}

text() { printf '\n==== %s\n\n%s\n' "$1" "$(tr -d '\r' < "$2")" >> "$texts"; }

# What lies inside a package and version, or inside a file of the sources. Fails where inside.txt has no heading of it.
parts_inside() {
    local line is_of=false found=1
    while IFS= read -r line; do
        if [[ $line == \[* ]]; then
            # shellcheck disable=SC2053
            if [[ $1 == ${line:1:-1} ]]; then is_of=true found=0 met[$line]=yes; else is_of=false; fi
        elif $is_of && [[ $line != \#* ]]; then
            IFS='|' read -r name licence whose from <<< "$line"
            part "$name" "$licence" "$whose" "$from"
        fi
    done < "$inside"
    return "$found"
}

echo "BenchSim"
echo
cat LICENSE
echo
echo "What is inside, whose it is, and under which licence. The texts follow below."
echo
# "Name/1.2.3": { with "type": "package" or "runtimepack" in the next line.
while IFS=/ read -r name version; do
    is_net=false
    [[ $name != runtimepack.* ]] || is_net=true
    name=${name#runtimepack.}
    folder=$packages/${name,,}/$version
    spec=$folder/${name,,}.nuspec
    licence=$(tag 'license type="expression"' "$spec" || true)
    [ -n "$licence" ] || fail "$name $version has no licence expression."
    part "$name $version" "$licence" "$(tag copyright "$spec" || tag authors "$spec")" "$(tag projectUrl "$spec" || true)"
    for file in "$folder"/LICENSE* "$folder"/THIRD-PARTY-NOTICES* "$folder"/Notices/NOTICES*; do
        [ ! -e "$file" ] || text "$name $version: $(basename "$file")" "$file"
    done
    # Those of .NET itself bring notices of all that is inside.
    if ! parts_inside "$name $version" && ! $is_net && compgen -G "$folder/runtimes/*/native/*" > /dev/null; then
        fail "$name $version brings native files, and $inside does not say what lies inside that version of them."
    fi
done < <(grep -B 1 -E '"type": "(package|runtimepack)"' "$deps" | grep -oE '"[A-Za-z0-9._-]+/[^"]+"' | tr -d '"' | sort -u)
# A file of somebody else lies beside its licence.
while IFS= read -r file; do
    case $file in
        *LICENSE*) text "$file" "$file" ;;
        *.cs | *.md) ;;
        *) parts_inside "$file" || fail "$file lies beside a licence, and $inside does not say whose it is." ;;
    esac
done < <(
    find src -path '*/obj' -prune -o -path '*/bin' -prune -o -name '*LICENSE*' -printf '%h\n' |
        sort -u | xargs -I{} find {} -maxdepth 1 -type f | sort
)
while IFS= read -r line; do
    [[ $line != \[* || -v met[$line] ]] || fail "$inside: nothing is called $line any more."
done < "$inside"
for licence in $(tr ' ' '\n' <<< "$used" | sort -u); do
    # Whoever may choose takes the other; the fonts bring theirs along.
    [[ $licence != MS-PL && $licence != Bitstream-Vera ]] || continue
    file=eng/licences/$licence.txt
    [ -e "$file" ] || { fail "The text of $licence is not in eng/licences."; continue; }
    printf '\n==== %s\n\n%s\n' "$licence" "$(cat "$file")"
done
cat "$texts"
exit "$code"
