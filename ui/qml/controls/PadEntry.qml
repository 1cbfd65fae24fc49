// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick

// What the keys of the number pad do to the text being typed: a number with a point or a comma, or a time of day.
QtObject {
    property string text
    // The old value is in place and the next digit replaces it.
    property bool fresh: false
    property bool negative: false
    property bool timeOfDay: false

    readonly property int longest: 12
    readonly property bool empty: text.length === 0
    readonly property bool complete: timeOfDay ? /^\d{1,2}:\d\d$/.test(text) : /^-?\d+([.,]\d*)?$/.test(text)

    // The text to hand over: a time has two digits for the hour, a number no mark without a digit behind it.
    readonly property string finished: timeOfDay ? text.padStart(5, "0") : text.replace(/[.,]$/, "")

    function start(value: string): void {
        text = value;
        fresh = value.length > 0;
    }

    function backspace(): void {
        fresh = false;
        text = text.slice(0, text.endsWith(":") ? -2 : -1);
    }

    // True if the key means something here; a key that would spoil the entry changes nothing.
    function type(key: string): bool {
        if (!/^[0-9.,:-]$/.test(key))
            return false;
        const before = fresh && key !== "-" ? "" : text;
        const after = timeOfDay ? typeTime(before, key) : typeNumber(before, key);
        if (after !== before && after.length <= longest) {
            text = after;
            fresh = false;
        }
        return true;
    }

    function typeNumber(before: string, key: string): string {
        if (key === ":")
            return before;
        if (key === "-")
            return !negative ? before : before.startsWith("-") ? before.slice(1) : "-" + before;
        if (key !== "." && key !== ",")
            return before + key;
        if (/[.,]/.test(before))
            return before;
        return (/\d$/.test(before) ? before : before + "0") + key;
    }

    // Hours end at 23 and minutes at 59, so the colon mostly comes by itself: 930 is 9:30, 1830 is 18:30.
    function typeTime(before: string, key: string): string {
        if (key === ":" || key === "." || key === ",")
            return before.length === 0 || before.includes(":") ? before : before + ":";
        if (key === "-")
            return before;
        const minutes = before.split(":")[1];
        if (minutes !== undefined)
            return minutes.length === 2 || minutes.length === 0 && key > "5" ? before : before + key;
        if (before.length === 0)
            return key > "2" ? key + ":" : key;
        if (Number(before + key) <= 23)
            return before + key + ":";
        return key > "5" ? before : before + ":" + key;
    }
}
