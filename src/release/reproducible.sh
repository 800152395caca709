#!/bin/sh
# Builds the jar and the zip once more, from a copy elsewhere at another time, and says whether they
# have the bytes of those in target. Takes Maven's options.
set -eu
cd "$(dirname "$0")/../.."
here=$PWD
there=$(mktemp -d)
trap 'rm -rf "$there"' EXIT
mkdir "$there/another folder"
git ls-files -z --cached --others --exclude-standard | tar --null --files-from=- -cf - |
  tar -xf - -C "$there/another folder"
cd "$there/another folder"
# What a machine or a person may have set otherwise.
umask 077
TZ=Pacific/Chatham LC_ALL=C ASSIZE_ARCHIVE=no mvn -q -B -Dmaven.test.skip=true "$@" package
different=0
for file in assize.jar assize.zip; do
  if cmp "$here/target/$file" "target/$file"; then
    sha256sum "target/$file"
  else
    different=1
  fi
done
exit "$different"
