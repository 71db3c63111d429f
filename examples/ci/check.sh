#!/bin/sh
# Checks files of cases with a Loopstate service and writes a report for the build server beside each.
#
#   check.sh URL REPORTS FILE...
#
# Ends with 0 if every case passed, 1 if one did not, 2 if a file could not be read or no service answered.
# Needs a POSIX shell and curl.
set -u

if [ "$#" -lt 3 ]; then
  echo "usage: $0 URL REPORTS FILE..." >&2
  exit 2
fi
url=${1%/}
reports=$2
shift 2
mkdir -p "$reports" || exit 2

# A container next to the job may still be starting.
tries=0
until curl -fsS -o /dev/null --max-time 5 "$url/q/health/ready" 2>/dev/null; do
  tries=$((tries + 1))
  if [ "$tries" -ge 60 ]; then
    echo "no service is ready at $url" >&2
    exit 2
  fi
  sleep 1
done

worst=0
for file in "$@"; do
  name=$(basename "$file" .json)
  report="$reports/$name.xml"
  # A busy service says when to come again, and curl does as it is told.
  status=$(curl -sS -o "$report" -w '%{http_code}' --max-time 60 --retry 5 \
    -H 'Content-Type: application/json' --data-binary "@$file" "$url/v1/verify?format=junit") || status=000
  if [ "$status" != 200 ]; then
    echo "$name: not checked, HTTP $status"
    cat "$report" 2>/dev/null
    echo
    rm -f "$report"
    worst=2
  elif grep -Eq '<testsuites[^>]* failures="0"' "$report" && grep -Eq '<testsuites[^>]* errors="0"' "$report"; then
    echo "$name: passed"
  else
    echo "$name: failed"
    # For a look at the log; what a reader of reports needs is in the file.
    grep -E '<failure|<error' "$report"
    [ "$worst" -eq 2 ] || worst=1
  fi
done
exit "$worst"
