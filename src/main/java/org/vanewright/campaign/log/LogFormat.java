package org.vanewright.campaign.log;

/** What a log is written in. */
public enum LogFormat {
    CSV,
    GPX
}
