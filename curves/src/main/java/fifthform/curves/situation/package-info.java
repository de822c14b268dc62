/** Everything known at one moment, as alarms and cues look at it. */
package fifthform.curves.situation;
