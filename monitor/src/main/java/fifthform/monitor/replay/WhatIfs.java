package fifthform.monitor.replay;

import fifthform.monitor.session.SessionSnapshot;
import java.util.List;

/** What the batch would have done after another act. Called once, on a background thread, when the batch is gone through. */
public interface WhatIfs {
    /** Nobody can say. */
    WhatIfs NONE = (recording, last) -> List.of();

    /** The questions that can be answered for this batch; none where nothing of its kitchen is known well enough. */
    List<WhatIf> answers(Recording recording, SessionSnapshot last);
}
