package screedbook;

/** The first class of the packed file, written for any Java since 8: an old one is told in a sentence what is wanted. */
public final class Start {
    private static final int WANTED = 17;

    private Start() {}

    public static void main(String[] words) {
        String tooOld = tooOld(System.getProperty("java.specification.version", "8"));
        if (!tooOld.isEmpty()) {
            System.err.println("screedbook: " + tooOld);
            System.exit(3);
        }
        Main.main(words);
    }

    /** What to tell the person whose Java is of this version; empty when it will do. */
    static String tooOld(String specification) {
        int have = version(specification);
        return have >= WANTED
                ? ""
                : "this is Java " + have + ", right would be Java " + WANTED
                        + " or later; or take the image, which brings its own";
    }

    /** 1.8 is Java 8; 11 is Java 11 (JEP 223). */
    private static int version(String text) {
        String number = text.startsWith("1.") ? text.substring(2) : text;
        int dot = number.indexOf('.');
        return Integer.parseInt(dot < 0 ? number : number.substring(0, dot));
    }
}
