"""Writes lines byte by byte, as a slow serial line delivers them; not our program, only bytes on a wire.

usage: trickle.py PORT LINES MILLISECONDS_A_LINE MILLISECONDS_A_BYTE
"""
import os
import sys
import time

port, lines, line_millis, byte_millis = sys.argv[1], int(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4])
wire = os.open(port, os.O_WRONLY | os.O_NOCTTY)
begun = time.monotonic()
for number in range(lines):
    for byte in b"T: %.2f C\r\n" % (30 + number / 100):
        os.write(wire, bytes([byte]))
        time.sleep(byte_millis / 1000)
    time.sleep(max(0, begun + (number + 1) * line_millis / 1000 - time.monotonic()))
while True:  # the board stays plugged in
    time.sleep(1)
