package screedbook.demo;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import screedbook.calc.RandomNumber;

/** Seeds of random places that are the same whenever the demo is written; a laptop draws its own by chance. */
final class Seeds {
    private static final Map<String, String> KNOWN = new HashMap<>();

    String fresh(String shift) {
        String seed = RandomNumber.sha256("made-up seed " + shift + " " + KNOWN.size())
                .substring(0, 32);
        KNOWN.put(RandomNumber.sha256(seed), seed);
        return seed;
    }

    Optional<String> seed(String sha256) {
        return Optional.ofNullable(KNOWN.get(sha256));
    }
}
