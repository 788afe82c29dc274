# Shared by run and test: where the project lies, which tools it needs, how it is built. Everything said goes to stderr.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
# Where the program lies with what belongs to it; in a packaged image somewhere else.
place=$root/target
jar=$place/domefold.jar
archive=$place/domefold.jsa
stamp=$root/target/built

# set_java_flags [WORD]: what a start gives to Java, in java_flags; WORD is the program's first. Which archive of classes is
# used depends on it: the larger an archive is, the longer the JVM takes to put it into place. One that was cut short would end
# the JVM at the first page it lacks, so one that has not the size it was made with is left alone; without any everything works,
# only later. scripts/package hands this and the next function on to the image.
set_java_flags() {
    local classes huge=
    java_flags=(-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData "-XX:ErrorFile=$place/hs_err_%p.log"
        "-Dlibrary.jline.path=$place/native" -Xlog:disable -Xlog:all=error:stderr)
    if [ "${1-}" = plan ]; then
        # It is over before much of what is compiled pays, so it gets less of each method compiled and smaller pieces of memory. Large
        # pages spare it thousands of first touches; where the system has none, asking for them is answered with a warning.
        java_flags+=(-XX:C1MaxInlineSize=15 -XX:Tier3MinInvocationThreshold=5 -XX:TLABSize=128k -XX:-ResizeTLAB)
        { read -r huge </sys/kernel/mm/transparent_hugepage/enabled; } 2>/dev/null || true
        case "$huge" in *'[always]'* | *'[madvise]'*) java_flags+=(-XX:+UseTransparentHugePages) ;; esac
    fi
    for classes in "${archive%.jsa}-${1-}.jsa" "$archive"; do
        if whole_archive "$classes"; then
            java_flags+=("-XX:SharedArchiveFile=$classes" -Xshare:auto)
            break
        fi
    done
}

# True when the file has the size that stands beside it.
whole_archive() {
    [ -f "$1" ] && [ -f "$1.size" ] && [ "$(($(wc -c <"$1")))" = "$(cat "$1.size")" ]
}

say() { printf '%s\n' "$*" >&2; }

# The first JDK of at least 17: JAVA_HOME, then the path. Prints the folder that holds java and javac, or nothing.
find_jdk() {
    local bin version
    for bin in "${JAVA_HOME:+$JAVA_HOME/bin}" "$(dirname "$(command -v javac 2>/dev/null || echo /none/javac)")"; do
        [ -n "$bin" ] && [ -x "$bin/javac" ] && [ -x "$bin/java" ] || continue
        version=$("$bin/javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p' | head -n 1)
        if [ -n "$version" ] && [ "$version" -ge 17 ]; then
            printf '%s\n' "$bin"
            return 0
        fi
    done
    return 1
}

# need_tools mvn [tmux]: a JDK and the named programs, installed on Debian as root or with sudo, else asked for.
need_tools() {
    local missing=() tool as=()
    find_jdk >/dev/null || missing+=(default-jdk-headless)
    for tool in "$@"; do
        if ! command -v "$tool" >/dev/null 2>&1; then
            [ "$tool" = mvn ] && missing+=(maven) || missing+=("$tool")
        fi
    done
    [ ${#missing[@]} -gt 0 ] || return 0
    if [ -e /etc/debian_version ] && command -v apt-get >/dev/null 2>&1; then
        if [ "$(id -u)" = 0 ]; then
            as=(env)
        elif command -v sudo >/dev/null 2>&1 && { sudo -n true 2>/dev/null || [ -t 0 ]; }; then
            as=(sudo)
        fi
    fi
    if [ ${#as[@]} -gt 0 ]; then
        say "Installing ${missing[*]} ..."
        { "${as[@]}" apt-get -qq update && "${as[@]}" env DEBIAN_FRONTEND=noninteractive \
            apt-get -qq -y install --no-install-recommends "${missing[@]}"; } >&2 </dev/null || true
        hash -r
    fi
    for tool in "$@"; do
        command -v "$tool" >/dev/null 2>&1 || ask_for_tools "$@"
    done
    find_jdk >/dev/null || ask_for_tools "$@"
}

ask_for_tools() {
    local names="a JDK 17 or newer and Maven"
    case " $* " in *" tmux "*) names="a JDK 17 or newer, Maven and tmux" ;; esac
    say "Domefold needs $names: install what is missing with your system's package manager and start again."
    exit 4
}

# True when the jar is missing or anything it is made of is newer than the last build.
is_stale() {
    [ -e "$jar" ] && [ -e "$stamp" ] && [ -x "$(cat "$stamp")/java" ] || return 0
    [ -n "$(find "$root/pom.xml" "$root/src/main" "$root/src/build" "$root/shared" -newer "$stamp" -print -quit)" ]
}

# build MAVEN-ARGUMENTS...: runs Maven and marks the build; what changes meanwhile counts as newer.
build() {
    local bin
    bin=$(find_jdk)
    mkdir -p "$root/target"
    printf '%s\n' "$bin" >"$stamp.new"
    JAVA_HOME=$(dirname "$bin") mvn -B -f "$root/pom.xml" "$@" || return 1
    mv "$stamp.new" "$stamp"
    archive_classes "$bin/java" "$jar" "$root/demo-data/ordinary.json" "$archive" "$root/target/native"
}

# archive_classes JAVA JAR CASE ARCHIVE NATIVE: the classes of ordinary starts, ready to be mapped into memory, and beside them in
# ARCHIVE-plan.jsa those of a plan alone. Whole archives and not ones on top of the JDK's, because only those take classes as old as
# those of two of our libraries. The start screen is part of the rehearsal where there is a program that can lend a terminal.
# Without the archives everything works, only later.
archive_classes() {
    local list=$4.list home=$4.home rehearsal
    rm -rf "$list" "$home" "$5"
    rehearsal=(env "DOMEFOLD_HOME=$home" TERM=xterm-256color LC_ALL=C.UTF-8 "$1" -Xshare:off -XX:TieredStopAtLevel=1
        "-XX:DumpLoadedClassList=$list" "-Dlibrary.jline.path=$5" -Xlog:disable -cp "$2" domefold.app.ClassArchive "$3")
    "${rehearsal[@]}" >/dev/null 2>&1 </dev/null || true
    dump_classes "$1" "$2" "$list" "${4%.jsa}-plan.jsa"
    rehearsal+=("$5")
    if script -qec true /dev/null >/dev/null 2>&1 </dev/null; then
        SHELL=/bin/sh script -qec "$(printf '%q ' "${rehearsal[@]}")" /dev/null >/dev/null 2>&1 </dev/null || true
    else
        "${rehearsal[@]}" >/dev/null 2>&1 </dev/null || true
    fi
    dump_classes "$1" "$2" "$list" "$4"
    rm -rf "$home"
}

# dump_classes JAVA JAR LIST ARCHIVE: makes the archive from the list and notes its size beside it.
dump_classes() {
    rm -f "$4" "$4.size" "$4.new"
    if "$1" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:dump "-XX:SharedClassListFile=$3" "-XX:SharedArchiveFile=$4.new" \
        -Xlog:disable -cp "$2" >/dev/null 2>&1 </dev/null; then
        printf '%d\n' "$(wc -c <"$4.new")" >"$4.size"
        mv "$4.new" "$4"
    fi
    rm -f "$3" "$4.new"
}

# Builds only when needed, quietly unless it fails; two at once wait for each other.
ensure_built() {
    is_stale || return 0
    need_tools mvn
    mkdir -p "$root/target"
    exec 8>"$root/target/lock"
    flock 8 2>/dev/null || true
    if is_stale; then
        say "Building Domefold ..."
        if ! build -q -Dmaven.test.skip=true package >"$root/target/build.log" 2>&1 </dev/null; then
            tail -n 20 "$root/target/build.log" >&2
            say "Domefold could not be built; the whole log is in $root/target/build.log."
            exit 4
        fi
    fi
    exec 8>&-
}
