#!/bin/sh
# Makes the folder of the photos and gives it to whoever is named; an empty volume takes both over.
set -eu
folder="${PHOTO_FOLDER:?}"
mkdir -p "$folder"
chmod 700 "$folder"
chown "${1:?whose is it to be?}" "$folder"
