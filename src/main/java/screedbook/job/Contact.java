package screedbook.job;

import screedbook.entry.Blank;

/** How somebody is reached; kept apart from the record, so that it can be forgotten. */
public record Contact(
        @Blank(value = "initials", due = Blank.Due.ALWAYS, width = 5, help = "as under people")
        String initials,

        @Blank(value = "name", width = 24) String name,
        @Blank(value = "phone", width = 20) String phone,
        @Blank(value = "mail", width = 30) String mail,
        @Blank(value = "address", width = 40) String address) {}
