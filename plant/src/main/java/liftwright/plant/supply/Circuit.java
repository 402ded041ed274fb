package liftwright.plant.supply;

/**
 * The network of a run in one thread: as it was planned, until something in it opens or is lost.
 * Then it is planned anew without that, which allocates.
 */
public final class Circuit {

    private final Network whole;
    private final NetworkState wholeState;
    private Network plan;
    private NetworkState state;

    /**
     * @param whole as it stands at the start of a run
     * @param state its numbers
     */
    public Circuit(Network whole, NetworkState state) {
        this.whole = whole;
        wholeState = state;
        plan = whole;
        this.state = state;
    }

    /** The network as it is now. */
    public Network plan() {
        return plan;
    }

    /** Its numbers; others after an opening. */
    public NetworkState state() {
        return state;
    }

    /** Takes a chain out; what hangs behind it alone is dead from now on. */
    public void open(int chain) {
        if (!plan.isOpen(chain)) {
            replan(plan.opened(chain));
        }
    }

    /** Takes a pack out: it neither gives nor takes, and what its leads join stays joined. */
    public void lose(int pack) {
        if (!plan.isLost(pack)) {
            replan(plan.lost(pack));
        }
    }

    private void replan(Network next) {
        NetworkState before = state;
        plan = next;
        state = plan.newState();
        System.arraycopy(before.emfV, 0, state.emfV, 0, state.emfV.length);
        System.arraycopy(before.packOhm, 0, state.packOhm, 0, state.packOhm.length);
        System.arraycopy(before.chainOhm, 0, state.chainOhm, 0, state.chainOhm.length);
    }

    /** The whole again, for another run. */
    public void close() {
        plan = whole;
        state = wholeState;
    }
}
