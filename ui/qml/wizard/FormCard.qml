// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.ViewModels

// A form with its title.
Card {
    id: card

    required property FormModel form
    required property NumberPad pad
    property bool readOnly: false

    visible: form !== null && form.count > 0

    Repeater {
        model: card.form
        delegate: FormLine {
            form: card.form
            pad: card.pad
            readOnly: card.readOnly
            Layout.fillWidth: true
        }
    }
}
