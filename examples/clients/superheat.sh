#!/bin/sh
# One number for a shell script: the superheat of an R-290 case from gauge and thermometer.
set -eu
url=${LOOPSTATE_URL:-http://localhost:8080}
superheat=$(curl -fsS -G "$url/v1/cycle-points/readings" \
  --data-urlencode 'refrigerant=R-290' \
  --data-urlencode 'suctionPressure=18 psig' \
  --data-urlencode 'suctionLineTemperature=10 degF' \
  --data-urlencode 'dischargePressure=160 psig' \
  --data-urlencode 'units=IP' \
  --data-urlencode 'format=txt' \
  --data-urlencode 'pick=superheat' \
  --data-urlencode 'digits=3')
echo "superheat: $superheat delta_degF"
