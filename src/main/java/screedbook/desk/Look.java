package screedbook.desk;

/** How the desk is coloured: for the light that falls on the screen. */
public enum Look {
    /** Dark without glare. */
    NIGHT,
    /** Black on white and bold, for sun on the screen. */
    SUN,
    /** No colour at all. */
    MONO
}
