package screedbook.spec;

import java.util.List;

/** A table of limits with citations. */
public final class SpecSheet {
    private final String name;
    private final String sha256;
    private final List<String> foot;

    SpecSheet(String name, String sha256, List<String> foot) {
        this.name = name;
        this.sha256 = sha256;
        this.foot = foot;
    }

    public String name() {
        return name;
    }

    /** Of the file's exact bytes, hex. */
    public String sha256() {
        return sha256;
    }

    /** What the sheet says of itself: document, edition, and that the contract's own edition governs. */
    public List<String> foot() {
        return foot;
    }
}
