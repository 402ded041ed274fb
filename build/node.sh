# Sourced by ../liftwright and ../verify: whether Node is there and new enough to build the page.

oldest_node=20

node_fits() {
    local major
    command -v npm >/dev/null || return 1
    major=$(node -p 'process.versions.node.split(".")[0]' 2>/dev/null) || return 1
    [ "$major" -ge "$oldest_node" ] 2>/dev/null
}
