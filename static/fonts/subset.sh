#!/bin/sh
# Makes the subsets in this folder from the full fonts in $1 (see README.md).
set -eu
from=$1
here=$(dirname "$0")
letters="U+0000-00FF,U+0100-017F,U+2000-206F,U+20A0-20BF,U+2122,U+2150-215F,U+2190-2193,U+2212,U+2248,U+2260,U+2264,U+2265,U+2713,U+2717"

web() { /usr/bin/python3 -m fontTools.subset "$1" --unicodes="$letters" --layout-features='*' --flavor=woff2 --output-file="$here/$2.woff2"; }
pdf() { /usr/bin/python3 -m fontTools.subset "$1" --unicodes="$letters" --layout-features='' --no-hinting --output-file="$here/$2.ttf"; }
both() { web "$1" "$2"; pdf "$1" "$2"; }

both "$from/source-serif-4/400Regular/SourceSerif4_400Regular.ttf" source-serif-regular
both "$from/source-serif-4/400Regular_Italic/SourceSerif4_400Regular_Italic.ttf" source-serif-italic
both "$from/source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf" source-serif-semibold
both "$from/inter/400Regular/Inter_400Regular.ttf" inter-regular
web "$from/inter/500Medium/Inter_500Medium.ttf" inter-medium
both "$from/inter/600SemiBold/Inter_600SemiBold.ttf" inter-semibold
