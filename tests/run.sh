#!/usr/bin/env bash
# Runs every test of the project. What the tests need beyond the .NET SDK is installed when that is possible;
# otherwise the tests that need it are skipped and counted. With CI=true nothing may be skipped.
set -u
cd "$(dirname "$0")/.." || exit 2
results=artifacts/test-results
# Programs that soon end gain nothing from counting calls so as to compile better later.
export DOTNET_TieredPGO=0
rm -rf "$results"

# Two forms of the browser: one without windows for nearly all, and the whole one for what only it can do.
for browser in chromium chromium-headless-shell; do
  if ! command -v $browser >/dev/null 2>&1 && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
    echo "Installing $browser for the browser tests"
    { apt-get update -qq && apt-get install -y -qq --no-install-recommends $browser; } >/dev/null 2>&1 ||
      echo "$browser could not be installed"
  fi
done
command -v chromium >/dev/null 2>&1 || echo "No Chromium: the browser tests will be skipped"
# The tests start a server of their own from these programs, or use the one that DX_POSTGRES names.
if ! ls /usr/lib/postgresql/*/bin/initdb >/dev/null 2>&1 && [ -z "${DX_POSTGRES:-}" ] &&
  [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
  echo "Installing PostgreSQL for the tests of its store"
  { apt-get update -qq && apt-get install -y -qq --no-install-recommends postgresql; } >/dev/null 2>&1 ||
    echo "PostgreSQL could not be installed: the tests of its store will be skipped"
fi
if ! command -v dot >/dev/null 2>&1 && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
  echo "Installing GraphViz for the test of the graphs written for it"
  { apt-get update -qq && apt-get install -y -qq --no-install-recommends graphviz; } >/dev/null 2>&1 ||
    echo "GraphViz could not be installed: its test will be skipped"
fi

if command -v npm >/dev/null 2>&1; then
  [ -d tests/Pages/node_modules/typescript ] || (cd tests/Pages && npm ci --no-audit --no-fund --ignore-scripts --silent) ||
    echo "The tools that look the pages through could not be installed: their tests will be skipped"
else
  echo "No npm: the pages' types and loading will not be looked through"
fi

status=0
dotnet build DxAssistant.sln --nologo -v quiet || exit 1
dotnet run --project bot/Server --no-build -- content check || status=1
# The browser tests look at the engine that is shipped, not at what a plain build lays beside them.
engine=tests/Browser.Tests/bin/Debug/net10.0/engine
# What the build has looked through is not looked through again.
dotnet publish bot/Browser -c Release --nologo -v quiet -p:RunAnalyzers=false -o artifacts/engine &&
  rm -rf "$engine" && cp -r artifacts/engine/wwwroot/_framework "$engine" || status=1
# One project after the other: the browser must not wait for a processor that other tests keep busy.
dotnet test DxAssistant.sln --nologo --no-build -m:1 --logger trx --results-directory "$results" || status=1

echo "Figures of the evaluation sets"
sets=tests/Reference/evaluation
score() { # command, sets: 1 only says that an answer was wrong, which the floors of the tests judge
  dotnet run --project bot/Server --no-build -- "$1" --score $(printf "$sets/%s.jsonl " "${@:2}") --figures
  [ $? -lt 2 ] || status=1
}
score match match match-dev match-dev-{2,3,4,5,6,7,8,9,10} match-judge-{3,5,6,7,8,9,10,11} symptoms-dev symptoms-dev-2
score glyph glyphs glyphs-judge
score read readings

echo "Pages on a phone with a slow line: performance, accessibility, best practices"
grep -hoE '/[a-z/-]* [0-9]+ [0-9]+ [0-9]+$' "$results"/*.trx 2>/dev/null | sort -u
grep -hoE '[0-9]+ answers, [0-9]+ bytes|engine [0-9]+ bytes and pages [0-9]+ bytes on the wire|without signal at a quarter of the processor.*' \
  "$results"/*.trx 2>/dev/null | sort -u

read -r passed failed skipped < <(cat "$results"/*.trx 2>/dev/null | grep -o '<Counters [^>]*>' | awk '
  { for (i = 1; i <= NF; i++) { split($i, a, "\"")
      if ($i ~ /^passed=/) p += a[2]; if ($i ~ /^(failed|error)=/) f += a[2]
      if ($i ~ /^total=/) t += a[2]; if ($i ~ /^executed=/) e += a[2] } }
  END { print p + 0, f + 0, t - e }')
[ "${passed:-0}" -gt 0 ] || status=1
if [ "${CI:-}" = true ] && [ "$skipped" -gt 0 ]; then
  echo "In CI nothing may be skipped"
  status=1
fi
[ "$status" = 0 ] || [ "$failed" -gt 0 ] || echo "The run failed outside the tests, see above"
echo "$passed passed, $failed failed, $skipped skipped"
exit "$status"
