/** Whether a probe is right: ice point, boiling point, a second probe; what a check found and how far it leaves doubt. */
package fifthform.curves.probecheck;
