# SPDX-License-Identifier: Apache-2.0
# shellcheck shell=bash
# Shared by packaging/run, packaging/test and .ci/run; sourced, never run. Needs bash and leaves the caller in the
# top folder of the source tree.

cd "$(dirname "${BASH_SOURCE[0]}")/.." || exit 1
build_dir=build/release
jobs=$(nproc)

say() { printf '\n== %s\n' "$*"; }

die() {
    printf '%s: %s\n' "${0##*/}" "$*" >&2
    exit 1
}

# timed <name> <command>...: runs the command in a shell of its own and gives back its status. With STAGE_TIMES set, a
# line "<name>|<seconds>|<status>" is added to that file.
timed() {
    local name=$1 begin=$SECONDS status=0
    shift
    ("$@") || status=$?
    printf '%s|%d|%d\n' "$name" $((SECONDS - begin)) "$status" >>"${STAGE_TIMES:-/dev/null}"
    return "$status"
}

# stage <name> <command>...: the same, and prints the name before and the time after.
stage() {
    local begin=$SECONDS status=0
    say "$1"
    timed "$@" || status=$?
    printf '== %s: %d s\n' "$1" $((SECONDS - begin))
    return "$status"
}

# packages_of <list>...: the names in packaging/packages-<list>.txt.
packages_of() {
    local list
    for list in "$@"; do
        awk '!/^#/ && NF { print $1 }' "packaging/packages-$list.txt"
    done
}

# missing_of <package>...: those that dpkg doesn't call installed. One query, a few hundredths of a second.
missing_of() {
    comm -23 <(printf '%s\n' "$@" | sort -u) \
        <(dpkg-query -W -f '${db:Status-Status} ${Package}\n' "$@" 2>/dev/null | awk '$1 == "installed" { print $2 }' | sort -u)
}

# lists_of_tests: the lists that the tests take here; the one of node and npm only where one of these commands is missing.
lists_of_tests() {
    printf '%s\n' run test
    if ! command -v node >/dev/null || ! command -v npm >/dev/null; then
        echo outside
    fi
}

# install_outside: puts the programs that the tests compare with where the tests look for them; nothing to do where they
# are those of the lock file already. npm empties node_modules first, so the copy of the lock file in there is true.
install_outside() {
    local folder=$build_dir/outside
    node -e 'process.exit(parseInt(process.versions.node) >= 18 ? 0 : 1)' ||
        die "the tests need node 18 or newer, as Debian 12 has it; here is $(node --version 2>&1)"
    if ! cmp -s tests/outside/package-lock.json "$folder/node_modules/installed-lock.json"; then
        stage "packages to compare with" npm_ci || die "npm could not install what tests/outside/package-lock.json names" \
            "and the tests compare with; what npm says stands above. It needs its registry, or a cache that holds them."
    fi
}

# The part of install_outside that speaks to npm; uses its variable folder.
npm_ci() {
    mkdir -p "$folder" && cp tests/outside/package.json tests/outside/package-lock.json "$folder/" &&
        npm ci --prefix "$folder" --ignore-scripts --no-audit --no-fund --no-update-notifier </dev/null &&
        cp tests/outside/package-lock.json "$folder/node_modules/installed-lock.json"
}

# install_missing <list>...: installs what is missing from the lists, through apt alone; silent when nothing is.
install_missing() {
    local wanted missing as_root=()
    command -v dpkg-query >/dev/null || die "this machine is no Debian; the packages needed are named in packaging/packages-*.txt"
    mapfile -t wanted < <(packages_of "$@")
    [ "${#wanted[@]}" -gt 0 ] || die "no package named in packaging/packages-*.txt"
    mapfile -t missing < <(missing_of "${wanted[@]}")
    if [ "${#missing[@]}" -eq 0 ]; then
        return 0
    fi
    if [ "$(id -u)" -ne 0 ]; then
        command -v sudo >/dev/null || die "sudo is not here; as root: apt-get install --no-install-recommends ${missing[*]}"
        as_root=(sudo)
    fi
    say "missing: ${missing[*]}"
    stage "install" apt_install
}

# The part of install_missing that speaks to apt; uses its variables missing and as_root.
apt_install() {
    local apt=("${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=300)
    "${apt[@]}" update || echo "package lists not renewed: going on with those at hand" >&2
    "${apt[@]}" install -y --no-install-recommends "${missing[@]}" </dev/null
}

# configure_release [tests]: prepares build/release where that is new, made from other presets, made for another folder or
# (with "tests") made without tests. A build that has its tests keeps them.
configure_release() {
    local cache=$build_dir/CMakeCache.txt presets=$build_dir/configured-presets.json tests=OFF fresh=()
    grep -qs '^BUILD_TESTING:[A-Z]*=ON' "$cache" && tests=ON
    if [ -f "$build_dir/build.ninja" ] && cmp -s CMakePresets.json "$presets" &&
        grep -qxs "CMAKE_HOME_DIRECTORY:INTERNAL=$PWD" "$cache" && { [ $# -eq 0 ] || [ "$tests" = ON ]; }; then
        return 0
    fi
    [ $# -eq 0 ] || tests=ON
    if [ -f "$cache" ] && ! grep -qxs "CMAKE_HOME_DIRECTORY:INTERNAL=$PWD" "$cache"; then
        fresh=(--fresh)
    fi
    stage "configure" cmake --preset release "${fresh[@]}" "-DBUILD_TESTING=$tests" "-DWETFRONT_BENCHMARKS=$tests" &&
        cp CMakePresets.json "$presets"
}

# build_release <target>...: builds; ninja counts the steps.
build_release() {
    NINJA_STATUS='[%f/%t, %e s] ' stage "build" cmake --build --preset release --parallel "$jobs" --target "$@"
}

# in_clean_session <command>...: runs the command with an own screen (Xvfb), home, temporary folder, locale and time
# zone, and nothing else from the caller's environment but PATH; what else it is to see stands as NAME=VALUE before the
# command. What it leaves behind is removed.
in_clean_session() (
    session=$(mktemp -d) || exit 1
    mkdir -m 700 "$session/home" "$session/tmp" "$session/runtime"
    # -noreset: a server that starts anew whenever its last window closes turns away the test that comes just then.
    Xvfb -displayfd 3 -noreset -screen 0 1920x1280x24 -nolisten tcp 3>"$session/display" >"$session/xvfb.log" 2>&1 &
    screen=$!
    trap 'kill "$screen" 2>/dev/null; wait "$screen" 2>/dev/null; rm -rf "$session"' EXIT
    for _ in $(seq 200); do
        [ -s "$session/display" ] && break
        kill -0 "$screen" 2>/dev/null || break
        sleep 0.1
    done
    if [ ! -s "$session/display" ]; then
        cat "$session/xvfb.log" >&2
        die "Xvfb did not start"
    fi
    env -i PATH="$PATH" HOME="$session/home" TMPDIR="$session/tmp" XDG_RUNTIME_DIR="$session/runtime" \
        XDG_CONFIG_HOME="$session/home/.config" XDG_DATA_HOME="$session/home/.local/share" \
        XDG_CACHE_HOME="$session/home/.cache" XDG_STATE_HOME="$session/home/.local/state" \
        LC_ALL=C.UTF-8 TZ=UTC DISPLAY=":$(cat "$session/display")" \
        QT_QPA_PLATFORM=xcb QT_QUICK_BACKEND=software "$@" </dev/null
)
