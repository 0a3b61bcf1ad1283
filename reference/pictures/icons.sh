#!/usr/bin/env bash
# Draws the app's icons, web/shared/icon-192.png and icon-512.png, from the same shapes as web/shared/icon.svg, without its round
# corners: a phone cuts its own. Needs a Chromium.
set -euo pipefail
cd "$(dirname "$0")/../.."
shapes=$(sed -E 's/ rx="10"//; s/#/%23/g; s/"/'"'"'/g' web/shared/icon.svg)
for size in 192 512; do
  page="data:text/html,<style>*{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${shapes}"
  "${CHROMIUM:-chromium}" --headless --no-sandbox --disable-gpu --hide-scrollbars "--window-size=$size,$size" "--screenshot=web/shared/icon-$size.png" "$page" > /dev/null 2>&1
done
