#!/bin/sh
# Runs the demonstration from the image, where there is no other Java, in a folder with a space that
# nobody may write, and compares its reports with those in reports/.
set -eu
cd "$(dirname "$0")/../.."
there=$(mktemp -d)
trap 'chmod -R u+w "$there"; rm -rf "$there"' EXIT
mkdir "$there/a place" "$there/commands"
tar -xzf target/image/assize-*.tar.gz -C "$there/a place"
image=$(echo "$there/a place"/assize-*)
chmod -R a-w "$there/a place"
for command in sh readlink; do
  ln -s "$(command -v "$command")" "$there/commands"
done
ln -s "$image/bin/assize" "$there/commands/assize"
cd "$there"
alone() {
  env -i PATH="$there/commands" "$@"
}
if alone sh -c 'command -v java'; then
  echo 'there is another Java on the path' >&2
  exit 1
fi
alone assize --version
alone assize explain syntax >said
grep -q "not: " said
alone assize demo demonstration >said 2>messages
cat said
if [ -s messages ]; then
  cat messages >&2
  exit 1
fi
for page in "$OLDPWD"/reports/*.html; do
  cmp "$page" "demonstration/reports/${page##*/}"
done
# Its archive is used: Java ends here where it can't be.
alone "$image/runtime/bin/java" -Xshare:on -XX:+UseSerialGC -m assize date 1934 >days
alone "$image/runtime/bin/java" -Xshare:on -XX:+UseSerialGC -Xlog:class+load:file=loaded \
  -m assize date 1934 >days
grep -q 'assize.cli.Main source: shared objects file' loaded
# Java's own terms travel along.
test -s "$image/runtime/legal/java.base/LICENSE"
du -sk "$image" | awk '{ printf "the image takes %.0f MB", $1 / 1024 }'
cat "$OLDPWD"/target/image/assize-*.tar.gz | wc -c | awk '{ printf ", packed %.0f MB\n", $1 / 1048576 }'
