// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.ViewModels

// In which order the controller asks; advice is shown in it.
Card {
    id: card

    required property TemplateViewModel described
    property string problem

    title: qsTr("In this order it asks")

    // The keyboard goes along with the line that was moved.
    function move(row: int, by: int): void {
        problem = described.move(row, by);
        const line = lines.itemAt(row + by) as TemplateOrderLine;
        if (line)
            line.takeFocus(by);
    }

    Repeater {
        id: lines
        model: card.described.order.length
        delegate: TemplateOrderLine {
            order: card.described.order
            onMoveAsked: by => card.move(index, by)
            Layout.fillWidth: true
        }
    }
    ErrorLine {
        text: card.problem
        Layout.fillWidth: true
    }
}
