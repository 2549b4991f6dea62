package screedbook.unit;

/** The system of units of a job; a job has one and never mixes the two. */
public enum UnitSystem {
    US,
    METRIC
}
