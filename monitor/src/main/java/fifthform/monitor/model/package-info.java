/** View models: snapshot and settings in, words, numbers and names of colours out; no nodes, no clock. */
package fifthform.monitor.model;
