package screedbook.desk;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.check.Guide;
import screedbook.check.Guides;
import screedbook.check.LeftToRoll;
import screedbook.entry.Entry;
import screedbook.entry.Source;
import screedbook.entry.Ticket;

/** The limits and offers beside the blanks of a form. */
final class Guiding {
    private Guiding() {}

    static Guide of(Model model, Form form, String blank) {
        Reading reading = Reading.of(form, model);
        return of(model, reading, reading.entry(), blank);
    }

    static Guide of(Model model, Reading reading, Entry entry, String blank) {
        if (entry instanceof Ticket ticket && blank.equals("number")) {
            return reading.form().amends() == null
                    ? model.shift().seen().numbers().guide(model.shift().job(), ticket)
                    : Guide.NOTHING;
        }
        OffsetDateTime at = reading.time() == null ? model.now() : reading.time();
        return Guides.of(model.shift().ground(), model.shift().day(), entry, at, blank);
    }

    /** How long the mat stays warm enough, where what is keyed live tells it. */
    static Optional<LeftToRoll> left(Model model, Reading reading, Entry entry) {
        if (reading.form().source() != Source.LIVE || reading.form().amends() != null) {
            return Optional.empty();
        }
        OffsetDateTime at = reading.time() == null ? model.now() : reading.time();
        return LeftToRoll.of(model.shift().job(), model.shift().rolled(), entry, at);
    }

    /** Other readings of what was typed and likely slips, those of the blank with the cursor first. */
    static List<Guide.Offer> offers(Model model, Form form) {
        Reading reading = Reading.of(form, model);
        Entry entry = reading.entry();
        List<Guide.Offer> offers = new ArrayList<>();
        add(model, reading, entry, form.active().name(), offers);
        for (Input input : form.inputs()) {
            if (input.touched() && !input.name().equals(form.active().name())) {
                add(model, reading, entry, input.name(), offers);
            }
        }
        return offers;
    }

    private static void add(Model model, Reading reading, Entry entry, String blank, List<Guide.Offer> to) {
        for (String other : reading.could().getOrDefault(blank, List.of())) {
            to.add(new Guide.Offer(other + "?", blank, other));
        }
        if (reading.form().input(blank).map(Input::touched).orElse(false)) {
            to.addAll(of(model, reading, entry, blank).offers());
        }
    }
}
