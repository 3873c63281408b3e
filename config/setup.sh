# What this program needs on the machine, for ./shimwright and ./check; sourced, not run. POSIX sh.

say() {
    printf '%s\n' "$*" >&2
}

# Runs as root: directly, or by sudo where it asks for no password. Fails where neither is possible.
as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    elif command -v sudo >/dev/null 2>&1 && sudo -n true 2>/dev/null; then
        sudo -n "$@"
    else
        return 1
    fi
}

# install WORDS PACKAGE…: installs Debian packages, or says in one sentence what is missing and ends.
install() {
    what=$1
    shift
    if ! command -v apt-get >/dev/null 2>&1 || ! as_root true; then
        say "Missing: $what. Install it (on Debian, as root: apt-get install $*) and start again."
        exit 2
    fi
    say "Installing $what once…"
    setup_log=$(mktemp)
    if ! {
        as_root env DEBIAN_FRONTEND=noninteractive apt-get update -q &&
            as_root env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "$@"
    } >"$setup_log" 2>&1 </dev/null; then
        tail -n 15 "$setup_log" >&2
        say "Could not install $what. Install $* by hand and start again; the log is in $setup_log."
        exit 2
    fi
    rm -f "$setup_log"
}

# java_version JAVA: its main version number, or 0.
java_version() {
    "$1" -version 2>&1 </dev/null | awk -F'"' '/version/ { split($2, part, "."); print (part[1] == 1 ? part[2] : part[1]); found = 1; exit }
        END { if (!found) print 0 }'
}

# Sets JAVA_HOME to the first Java from version 17 on that also compiles; fails where there is none.
find_jdk() {
    for candidate in "${JAVA_HOME:-}" "$(path_java)" /usr/lib/jvm/*; do
        if [ -n "$candidate" ] && [ -x "$candidate/bin/javac" ] && [ -x "$candidate/bin/java" ] &&
            [ "$(java_version "$candidate/bin/java")" -ge 17 ]; then
            JAVA_HOME=$candidate
            export JAVA_HOME
            return 0
        fi
    done
    return 1
}

# The home of the Java that the shell would find.
path_java() {
    found=$(command -v javac) || return 0
    found=$(readlink -f "$found")
    dirname "$(dirname "$found")"
}

need_jdk_and_maven() {
    if ! find_jdk; then
        install "Java from version 17 on (a JDK)" default-jdk-headless
        find_jdk || {
            say "The Java that was installed is older than 17. Install a JDK from version 17 on and start again."
            exit 2
        }
    fi
    command -v mvn >/dev/null 2>&1 || install "Maven" maven
}

# Text in and out is UTF-8, also where no language is set.
use_utf8() {
    case ${LC_ALL:-${LC_CTYPE:-${LANG:-}}} in
        *[Uu][Tt][Ff]8 | *[Uu][Tt][Ff]-8) ;;
        *)
            LC_ALL=C.UTF-8
            export LC_ALL
            ;;
    esac
}
