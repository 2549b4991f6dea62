package screedbook.tally;

import java.util.List;

/** Figures that belong together under one heading: tons by mix, tack by surface. */
public record Section(String id, String heading, List<Figure> figures) {}
