#!/bin/sh
# Prints the least heap in which a results page of 100 vehicles and one of 10,000 is written, after
# `mvn package`. Takes some minutes. JAVA_HOME says which Java.
set -eu
cd "$(dirname "$0")/../../.."
jar=$PWD/target/assize.jar
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
"$java" -version 2>&1 | head -n 1

for vehicles in 100 10000; do
  folder=$work/$vehicles
  mkdir "$folder"
  cp -r rules/tarrowby-type-l "$folder/"
  i=0
  while [ "$i" -lt "$vehicles" ]; do
    printf 'record: truck-%s\nrules: tarrowby-type-l\nedition: "3"\nvehicle: {name: Truck %s, model: L41}\n' \
      "$i" "$i" >"$folder/truck-$i.yaml"
    printf 'observations:\n  horn-button: {finish: nickel}\n' >>"$folder/truck-$i.yaml"
    i=$((i + 1))
  done
  least=none
  for heap in 64 48 32 24 20 16; do
    timeout 600 "$java" -XX:+UseSerialGC "-Xmx${heap}m" -jar "$jar" results "$folder" --no-reports \
      --out "$work/out" >/dev/null 2>&1 || break
    least=$heap
  done
  echo "$vehicles vehicles: $least MB"
done
