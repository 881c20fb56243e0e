package org.vanewright.security;

class H2ForgeryTest extends ForgeryCases {}
