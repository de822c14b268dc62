/** What to tell the maker to do next, and until when. */
package fifthform.curves.cue;
