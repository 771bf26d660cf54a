#!/usr/bin/env bash
# Brings what the tests need, then builds and runs every test project. What takes long is left out, but for "tests/run.sh all".
# Ends with one line that sums them all: N passed, N failed, N skipped.
set -euo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en

if ! command -v chromium >/dev/null; then
  as_root=; [ "$(id -u)" = 0 ] || as_root=sudo
  $as_root apt-get update
  $as_root apt-get install -y --no-install-recommends chromium fonts-dejavu-core
fi

dotnet restore
dotnet build --no-restore

only=(--filter 'Takes!=long')
[ "${1:-}" != all ] || only=()
log=$(mktemp)
status=0
for project in tests/*.Tests; do
  dotnet test "$project" --no-build "${only[@]}" 2>&1 | tee -a "$log" || status=1
done
awk '
  /(Passed|Failed|Skipped)! +- Failed:/ {
    seen++
    for (i = 1; i < NF; i++) {
      if ($i == "Failed:")  failed  += $(i + 1) + 0
      if ($i == "Passed:")  passed  += $(i + 1) + 0
      if ($i == "Skipped:") skipped += $(i + 1) + 0
    }
  }
  END { printf "%d passed, %d failed, %d skipped\n", passed, failed, skipped; exit seen < 3 || failed > 0 }
' "$log" || status=1
exit "$status"
