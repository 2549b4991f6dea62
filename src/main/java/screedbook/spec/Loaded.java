package screedbook.spec;

import java.util.List;
import java.util.Optional;

/** A sheet that was read, or everything that stood in the way. */
public record Loaded(Optional<SpecSheet> sheet, List<SheetTrouble> troubles) {}
