/** The maker's choices and where the program keeps its files, parsed once. */
package fifthform.monitor.settings;
