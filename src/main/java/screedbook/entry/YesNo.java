package screedbook.entry;

/** Yes or no, where the absence of both means not noted. */
public enum YesNo implements Word {
    YES,
    NO
}
