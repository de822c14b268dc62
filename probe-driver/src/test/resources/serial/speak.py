"""Writes the lines first..last to a serial port, as a hobby board would; not our program, only bytes on a wire.

usage: speak.py PORT FIRST LAST MILLISECONDS
"""
import os
import sys
import time

port, first, last, millis = sys.argv[1], int(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4])
wire = os.open(port, os.O_WRONLY | os.O_NOCTTY)
for number in range(first, last + 1):
    os.write(wire, b"T: %.2f C\r\n" % (30 + number / 100))
    time.sleep(millis / 1000)
while True:  # the board stays plugged in
    time.sleep(1)
