package screedbook.entry;

/** Somebody on the job: initials stand in every line that they write. */
public record Person(
        @Blank(value = "initials", due = Blank.Due.ALWAYS, width = 5)
        String initials,

        @Blank(value = "name", width = 24) String name,

        @Blank(value = "role", width = 20, help = "inspector, supervisor, contractor, plant")
        String role,

        @Blank(value = "public key", width = 60, help = "of a key that signs seals: the line of its .pub file")
        String publicKey) {}
