# Sourced by ../liftwright, ../verify, ../bench/run and the scripts beside it: finds a JDK that is new enough
# without starting one. The caller has set say().

oldest_java=25

# is_jdk FOLDER: a development kit that is new enough, by its release file.
is_jdk() {
    [ -x "$1/bin/java" ] && [ -x "$1/bin/javac" ] && [ -r "$1/release" ] || return 1
    local line major
    while IFS= read -r line; do
        case $line in
            JAVA_VERSION=*)
                major=${line#JAVA_VERSION=}
                major=${major//\"/}
                major=${major%%[.-]*}
                [ "$major" -ge "$oldest_java" ] 2>/dev/null
                return
                ;;
        esac
    done <"$1/release"
    return 1
}

# Sets jdk. A LIFTWRIGHT_JAVA_HOME that is no JDK is an error and not a reason to look elsewhere.
find_jdk() {
    local each
    if [ -n "${LIFTWRIGHT_JAVA_HOME:-}" ]; then
        is_jdk "$LIFTWRIGHT_JAVA_HOME" && jdk=$LIFTWRIGHT_JAVA_HOME && return
        say "LIFTWRIGHT_JAVA_HOME is $LIFTWRIGHT_JAVA_HOME, which is no JDK $oldest_java or newer." \
            "Point it at one, or unset it and the usual places are searched."
        return 1
    fi
    for each in "${JAVA_HOME:-}" /usr/lib/jvm/* /opt/java/* "${HOME:-}"/.sdkman/candidates/java/* \
        "${HOME:-}"/.jdks/* /Library/Java/JavaVirtualMachines/*/Contents/Home; do
        [ -n "$each" ] && is_jdk "$each" && jdk=$each && return
    done
    each=$(command -v java) && each=$(readlink -f "$each") && each=${each%/bin/java} \
        && is_jdk "$each" && jdk=$each && return
    say "needs a JDK $oldest_java or newer and found none." \
        "Install one (Debian: apt install openjdk-25-jdk-headless, or a build from adoptium.net)," \
        "or say where it is: LIFTWRIGHT_JAVA_HOME=/path/to/jdk"
    return 1
}

# Maven on the JDK that was found. Its own libraries use sun.misc.Unsafe; that is not news to our users. It ends before
# the slow one of Java's two compilers has earned what it costs.
maven() {
    JAVA_HOME=$jdk MAVEN_OPTS="-XX:TieredStopAtLevel=1 ${MAVEN_OPTS:-} --sun-misc-unsafe-memory-access=allow" command mvn "$@" -Dstyle.color=never
}
