package liftwright.quantity;

/** Which units a reader wants to see. What is computed is in SI whatever is shown. */
public enum UnitSystem {
    SI,
    /** Customary units of the United States; electricity, angle and time are the same in both. */
    US
}
