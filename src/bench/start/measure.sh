#!/bin/sh
# Times whole commands from outside and prints what they take as multiples of an empty start of the
# same Java. Needs hyperfine, a JDK, and what `mvn package` leaves; takes the image too where there
# is one. ROUNDS (20) says how often each is run; JAVA_HOME which Java.
set -eu
cd "$(dirname "$0")/../../.."
here=$PWD
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
bin=${JAVA_HOME:+$JAVA_HOME/bin/}
rounds=${ROUNDS:-20}

"${bin}javac" -d "$work" src/bench/start/*.java
# The finished truck without its photos, and without those of its rule set.
cp -r rules "$work/truck"
cd "$work/truck"
rm -r photos pictures tarrowby-type-l/pictures README.md
sed -i -e 's#^    photo: photos/.*#    document: papers/plater.txt#' \
  -e '/^    cover:/,/^      - .*height: 7.5/d' l45-4388.yaml
sed -i -e '/^ *photo: pictures/,/^ *caption:/d' tarrowby-type-l/areas/*.yaml
cd "$work"
# The same truck with twelve large photos.
cp -r truck photos
"${bin}java" -cp . Photos make 12 photos
awk '/document: papers/ && n < 12 { sub(/document: .*/, "photo: photo-" n++ ".jpg") } { print }' \
  truck/l45-4388.yaml >photos/l45-4388.yaml
awk '/^evidence:/ { print; for (n = 8; n < 12; n++)
  printf "  yard-%d:\n    photo: photo-%d.jpg\n    caption: A yard\n    by: the owner\n", n, n; next }
  { print }' photos/l45-4388.yaml >l45.yaml && mv l45.yaml photos/l45-4388.yaml
# A launcher's first start makes its archive; that is not measured.
"$here/target/assize/bin/assize" --version
"${bin}java" -version 2>&1 | head -n 1

# timed NAME COMMAND: its median in seconds, as the variable NAME
timed() {
  hyperfine --warmup 2 --runs "$rounds" --export-csv "$work/csv" "$2" >/dev/null 2>&1 || {
    echo "$2 failed" >&2
    exit 1
  }
  eval "$1=$(awk -F, 'END { print $4 }' csv)"
}
# says WHAT NAME: what it takes, as a multiple of the empty start
says() {
  eval "awk -v what='$1' -v took=\$$2 -v empty=$empty \
    'BEGIN { printf \"%-44s %6.0f ms %6.1f times an empty start\n\", what, took * 1000, took / empty }'"
}
jar="${bin}java -jar $here/target/assize.jar"
launcher="'$here/target/assize/bin/assize'"
timed empty "${bin}java -cp $work Empty"
timed plain "$jar judge truck/l45-4388.yaml --out out"
timed launched "$launcher judge truck/l45-4388.yaml --out out"
timed date "$launcher date 1934"
says 'an empty start' empty
says 'judge, plain java -jar' plain
says 'judge, launcher' launched
says 'date, launcher' date
if [ -x "$here/target/image/assize/bin/assize" ]; then
  timed image "'$here/target/image/assize/bin/assize' judge truck/l45-4388.yaml --out out"
  says 'judge, image' image
fi
timed alone "${bin}java -cp $work Photos $(echo photos/*.jpg)"
timed pictured "$launcher judge photos/l45-4388.yaml --out out"
awk -v all="$pictured" -v bare="$launched" -v alone="$alone" -v empty="$empty" 'BEGIN {
  printf "12 photos of 12 million pixels: judging with them takes %.2f s more than without;\n" \
    "decoding, shrinking and encoding them alone %.2f s more than an empty start: %.2f times\n",
    all - bare, alone - empty, (all - bare) / (alone - empty) }'
