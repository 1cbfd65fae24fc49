// SPDX-License-Identifier: Apache-2.0
pragma Singleton
import QtQuick

// Puts values into a translated text, all at once: one after the other, a "%2" that somebody wrote into a name would be
// taken for the place of the second value.
QtObject {
    function fill(text: string, values: var): string {
        return text.replace(/%([1-9])/g, (place, number) => values[Number(number) - 1] ?? place);
    }
}
