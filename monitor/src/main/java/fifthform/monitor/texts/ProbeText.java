package fifthform.monitor.texts;

/** What is said of ports, adapters and how they talk. */
public enum ProbeText implements Text {
    // AdapterFinder.
    /** {0} path, {1} talk throw. */
    THE_ADAPTER_ON_IS_REMEMBERED,
    /** {0} path. */
    LISTENING_TO_TO_FIND_OUT_HOW,
    /** {0} recognition reason. */
    IT_TALKS_THIS_IS_REMEMBERED,
    /** {0} recognition reason, {1} protocols, {2} port name talk. */
    IT_IS_WATCHED_AS_FOR_THE,
    /** {0} offered adapter, {1} probe role word, {2} port name option, {3} adapter path, {4} adapter channels name. */
    IT_HAS_SEVERAL_CHANNELS_THE,
    IT_DID_NOT_SAY_ANYTHING_LOOK,
    /** {0} offered listened. */
    IT_HAS,
    /** {0} adapter path, {1} name, {2} listened channels empty. */
    THE_ADAPTER_ON_HAS_NO_CHANNEL,
    /** {0} path, {1} probe role word, {2} port name option, {3} path. */
    TWO_PROBES_ARE_NAMED_ON_ONE,
    /** {0} offered adapter. */
    IT_HAS_ADAPTER_FINDER,
    /** {0} adapter path, {1} probe role word, {2} which, {3} port name option, {4} adapter path. */
    SEVERAL_PROBES_ARE_ON_AND,

    // PortsCommand.
    /** {0} per cent. */
    SURE_TO,
    NO_ADAPTER_IS_READY_PLUG_ONE,
    /** {0} port path. */
    READY_MONITOR_RUN_WATCH_PROBE,
    /** {0} use adapter. */
    USED_BEFORE,
    SENSOR_OF_THE_KERNEL,
    NOT_A_USB_ADAPTER,
    CHECKED,
    NOT_CHECKED,
    /** {0} heard, {1} decision ports command. */
    HEARD,
    /** {0} why c. */
    NOT,
    /** {0} candidate protocol id, {1} candidate line, {2} candidate rejection. */
    AT,

    // ProbeChooser.
    SPEED_WAS_GIVEN_WITH_A_REAL,
    /** {0} w role word, {1} w port. */
    THE_S_PROBE_IS_TAKEN_TO,
    SEVERAL_ADAPTERS_THAT_WERE,
    SEVERAL_ADAPTERS_WERE_FOUND,
    /** {0} what, {1} ports stream found, {2} practise. */
    NOTHING_WAS_STARTED_NAME_THE,
    /** {0} practise. */
    NO_PROBE_WAS_FOUND_NO_READING,
    /** {0} system line separator. */
    OR_PRACTISE_ON_A_SIMULATED,

    // ProbeOptions.
    /** {0} interval seconds, {1} longest interval seconds. */
    INTERVAL_WAS_NOTHING_WAS_DONE,

    // StayAwake.
    WHY_A_BATCH_IS_BEING_RECORDED
}
