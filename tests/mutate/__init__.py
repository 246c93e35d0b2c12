"""Breaking the code on purpose: small faults put into functions one at a time, and the tests that reach them asked whether they notice."""
