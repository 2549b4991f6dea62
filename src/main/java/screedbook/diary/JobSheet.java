package screedbook.diary;

import java.util.List;
import java.util.Map;
import screedbook.job.Revision;

/**
 * The files that a job is prepared in, as they were read: {@code job.json} and {@code people.json}.
 *
 * @param values the plain values of {@code job.json}; none when it is not there
 * @param contacts the entries of {@code people.json}, each with its initials first
 * @param stamp what the bytes of both come to; another one means that somebody else wrote meanwhile
 * @param commented whether {@code job.json} holds comments of somebody
 * @param there whether there is a {@code job.json}
 * @param revisions every accepted revision, oldest first
 * @param typed what was typed and not written before the program ended, of the files as they are now; may be empty
 * @param unread why a file is no JSON at all and cannot be revised from here; empty when both are
 */
public record JobSheet(
        Map<String, Object> values,
        List<Map<String, Object>> contacts,
        String stamp,
        boolean commented,
        boolean there,
        List<Revision> revisions,
        Map<String, Object> typed,
        List<Trouble> unread) {}
