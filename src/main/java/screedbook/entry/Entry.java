package screedbook.entry;

/**
 * What may be written down: one record per kind. The ordered list of the kinds is {@link Kind}; a component that is
 * null was not observed.
 */
public sealed interface Entry
        permits Opening,
                NoWork,
                Weather,
                Surface,
                Ticket,
                Part,
                Waste,
                Tack,
                Refill,
                Note,
                Answer,
                Number,
                Strike,
                Amend,
                Clock,
                Plan,
                HandOver,
                SetAside,
                Closing,
                Review,
                Draw,
                Depth,
                Yield,
                Mat,
                Profile,
                Rolling,
                Joint,
                Straightedge,
                Area,
                Gauge,
                Core,
                Sample,
                Custody,
                Result,
                Stop,
                Restart,
                Truck,
                PlantTotal,
                PlantList,
                Crew,
                InstrumentCheck,
                Safety {
    /** The kind of this entry. */
    default Kind kind() {
        return Kind.of(getClass());
    }
}
