#!/bin/sh
# Opens the workbench from the Finder, which runs programs in a shell.
cd "$(dirname "$0")" && exec ./benchsim open --show
